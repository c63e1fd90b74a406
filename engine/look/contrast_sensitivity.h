#pragma once
// How well the eye sees stripes of a given fineness [Mannos1974].
namespace combdraft::look {

/// Relative contrast sensitivity at a spatial frequency in cycles per degree,
/// 0 or more: peak 0.981 at 7.89, going to 0 for fine stripes.
double contrastSensitivity(double frequency_cpd);

/// Frequency, cycles per degree, of a light and a dark stripe of `stripe_mm`
/// each seen straight on at `distance_m`. Both above 0.
double stripeFrequency_cpd(double stripe_mm, double distance_m);

}  // namespace combdraft::look
