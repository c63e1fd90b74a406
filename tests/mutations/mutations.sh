# The mutations: what is broken, where, by which sed -E script, and which tests
# are asked first (a Catch2 test specification; if they stay green, every fast
# test is asked). Anchors are pieces of code, not line numbers;
# tests/mutations/run says when one no longer applies.
declare -a order=()
declare -A what=() file=() script=() tests=()

mutation() {  # name, what, file, tests, sed script
  order+=("$1"); what[$1]=$2; file[$1]=$3; tests[$1]=$4; script[$1]=$5
}

mutation shuffled-colours 'lock colours are dealt to other locks' \
  engine/look/lock_colours.cpp 'nape pieces hardly count*' \
  's/BinColour\* out = colours_\.data\(\) \+ static_cast<std::size_t>\(lock\)/BinColour* out = colours_.data() + (lock * 7919ull + 13) % owners_.size()/'

mutation shuffled-members 'a piece takes other locks than those in its strip' \
  engine/placement/members.cpp 'members are the roots*' \
  's/members\.push_back\(\{lock,/members.push_back({static_cast<std::uint32_t>((lock * 7919ull + 13) % roots.roots.size()),/'

mutation hair-behind-seen 'hair that lies underneath is seen like hair on top' \
  engine/visibility/raster.cpp '[raster]' \
  '/if \(a\.depth != b\.depth\) return a\.depth > b\.depth;/d'

mutation body-transparent 'hair behind head and shoulders is seen' \
  engine/visibility/raster.cpp '[embree]' \
  's/if \(depth > hidden\[pixel\]\)/if (depth > -1e9f)/
   s/if \(solid > BodyDepth::kNone\)/if (solid > 1e30f)/'

mutation mixed-in-lightness 'colours are averaged in L*, not in light' \
  engine/look/region_sums.cpp 'half dark and half white*' \
  's/sum\.x \+= w \* c\.x, sum\.y \+= w \* c\.y, sum\.z \+= w \* c\.z,/sum.x += w * std::cbrt(c.x), sum.y += w * std::cbrt(c.y), sum.z += w * std::cbrt(c.z),/
   s/labFrom\(\{s\.x \/ s\.area_mm2, s\.y \/ s\.area_mm2, s\.z \/ s\.area_mm2\}/labFrom({std::pow(s.x \/ s.area_mm2, 3), std::pow(s.y \/ s.area_mm2, 3), std::pow(s.z \/ s.area_mm2, 3)}/'

mutation no-drop-outs 'drop-outs are lightened like the rest of the piece' \
  engine/placement/members.cpp 'members are the roots*' \
  '/for \(const plan::Stretch& out : piece\.dropOuts\)/,/return;/d'

mutation regions-swapped 'readings of the left side are called right' \
  engine/visibility/region.cpp '[sides]' \
  's/const bool right = place\.x\(\) >= 0;/const bool right = place.x() < 0;/'

mutation views-swapped 'the left and right views are drawn in each other'"'"'s place' \
  engine/head/sheet_view.cpp '[head]' \
  's/case ViewName::Left: (.*)$/case ViewName::SwappedLeft: \1/
   s/case ViewName::Right:/case ViewName::Left:/
   s/case ViewName::SwappedLeft:/case ViewName::Right:/'

mutation frozen-look 'after an edit the look stays as it was' \
  engine/look/look_engine.cpp '[incremental]' \
  's/^  const bool first = !worn\.readings;/  bool drawn = true;\n  for (const PictureRequest\& r : pictures) drawn = drawn \&\& worn.pictures.at({r.view, r.pixel_mm}).picture();\n  if (worn.readings \&\& drawn) {\n    frame.readings = worn.readings;\n    for (const PictureRequest\& r : pictures) frame.pictures.push_back(worn.pictures.at({r.view, r.pixel_mm}).picture());\n    return frame;\n  }\n&/'

mutation no-read-back 'a save is not read back' \
  engine/plan/replace_file.cpp '[file]' \
  's/if \(const auto same = readBack\(fresh\); !step\(same\)\)/if (const auto same = readBack(fresh); false \&\& !step(same))/'

mutation backcomb-on-tight-curls 'a pattern brings its backcomb onto tight curls' \
  engine/plan/pattern.cpp 'on tight curls backcomb*' \
  's/if \(plan\.hair\(\)\.curl >= CurlClass::TightCurl\)/if (plan.hair().curl > CurlClass::TightCoil)/'

mutation pattern-ignores-hairline 'a pattern keeps bare directions and leaves the hairline of another head' \
  engine/plan/head_fit.cpp 'starting patterns fit*' \
  's/if \(same_\) return point;/return point;/'

mutation pasted-pairs-split 'a copied pair comes as two that do not follow each other' \
  engine/plan/parts.cpp 'pairs stay pairs*' \
  's/tidyTwin\(piece\.twinOf, plan\.find<Piece>\(piece\.twinOf\)\);/piece.twinOf.clear();/'

mutation scalp-counted-as-light 'scalp that shows through counts as light hair' \
  engine/look/region_sums.cpp 'scalp that shows counts*' \
  's/r\.light_share = total\.light \/ total\.area_mm2;/r.light_share = (total.light + scalp_mm2) \/ (total.area_mm2 + scalp_mm2);/'

mutation light-and-dark-swapped 'light blocks at an opening are called dark, and dark ones light' \
  engine/look/opening_blocks.cpp 'remedies that are offered*' \
  's/finder\.largest\(Kind::Light, /finder.largest(Kind::Swapped, /
   s/finder\.largest\(Kind::Dark, /finder.largest(Kind::Light, /
   s/Kind::Swapped, /Kind::Dark, /'

mutation rules-not-asked 'remedies and suggestions may do what is forbidden' \
  engine/advise/rules.cpp '[rules]' \
  's/^  return Comparison\(before, after\)\.run\(\);/  (void)before, (void)after;\n  return std::nullopt;/'

mutation blurred-lightness 'the eye blurs L*, not light' \
  engine/look/local_picture.cpp 'a few light strands in dark hair*' \
  's/y \+= colours\.at\(who\.lock\(\), who\.bin\(\)\)\.y \/ kSamples;/y += static_cast<float>(colour::lightnessFromY(colours.at(who.lock(), who.bin()).y) \/ 100) \/ kSamples;/
   s/colour::lightnessFromY\(((fine|wide)Light\[at\] \/ view\.(fine|wide)Cover\[at\])\)/100.0 * (\1)/
   s/return colour::lightnessFromY\((single\[.*\])\);/return 100.0 * \1;/'

mutation sweep-skipped 'the part is not swept: only its usual place is looked at' \
  engine/look/openings.cpp 'The sweep finds*' \
  's/for \(double s = -kFarthest_mm; s <= kFarthest_mm; s \+= kCoarse_mm\)/for (double s = 0; s <= 0; s += kCoarse_mm)/'

mutation folder-not-synced 'a save does not sync the folder' \
  engine/plan/replace_file.cpp '[file]' \
  's/const auto synced = disk\.syncFolder\(folderOf\(target\)\); !synced/const auto synced = false ? disk.syncFolder(folderOf(target)) : Result<void>(); !synced/'

mutation migration-drops-a-field 'the scalp contact of format 1 is lost on the way to format 2' \
  engine/plan/migrations.cpp '[format]' \
  's/leaflet\.add\(std::string\(key\.after\), taken\(formula, key\.before\)\);/if (JsonValue value = taken(formula, key.before); key.before != "scalpContact") leaflet.add(std::string(key.after), std::move(value));/'

mutation limit-removed 'a list may have as many entries as it likes' \
  engine/plan/json_reader.cpp '[reader]' \
  's/    if \(count > most\)/    if (count > most * 1000)/'

mutation autosave-gives-up 'autosave is off after a failure' \
  app/store/recovery.cpp '[recovery]' \
  's/const bool waits = newest_ && serial_ > startedSerial_;/const bool waits = newest_ \&\& serial_ > startedSerial_ \&\& failures_ == 0;/'

mutation lock-ignored 'a plan that another program has open is taken' \
  app/store/plan_lock.cpp '[lock]' \
  's/if \(next->error\(\) == QLockFile::LockFailedError\) \{/if (false) {/'

mutation undo-takes-agreement 'undo takes back what was agreed' \
  app/document/document_controller.cpp '[record]' \
  's/document_ = withRecords\(plan::applied\(withoutRecords\(std::move\(document_\)\), edit\), .*\);/document_ = plan::applied(withoutRecords(std::move(document_)), edit);/'

mutation earlier-agreement-lost 'agreeing anew forgets what was agreed before' \
  engine/plan/agreement.cpp '[agreement]' \
  's/next\.earlier\.push_back\(text \? \*text : beforeJson\);//'

mutation bowl-outlives-its-life 'product older than its life is placed' \
  engine/work/timeline.cpp 'no product older than its life*' \
  's/if \(life && start \+ portion\.place_min - bowl\.mixFrom_min > \*life \+ kSame_min\) continue;/if (life \&\& bowl.from_min - bowl.mixFrom_min > *life) continue;/'

mutation top-from-an-old-bowl 'pieces at the top come from the bowl that is there' \
  engine/work/timeline.cpp 'common practice on a head of twenty five*' \
  's/const bool fresh = life && .*;$/const bool fresh = false;/'

mutation hair-taken-twice 'hair under two pieces is counted twice' \
  engine/work/amounts.cpp 'hair is counted once*' \
  's/left -= static_cast<float>\(share\);/left -= 0 * static_cast<float>(share);/'

mutation clock-set-back 'a wall clock that is set back shortens the time on the hair' \
  engine/work/appointment_log.cpp 'a clock set back between two runs*' \
  's/return times\.back\(\) \+ std::max\(0\.0, wallSeconds\(log\.events\.back\(\), clock\.utc_ms\)\);/return times.back() + wallSeconds(log.events.back(), clock.utc_ms);/'

mutation taken-back-still-counts 'a tap that was taken back counts' \
  engine/work/appointment_log.cpp 'a tap taken back stays*' \
  's/if \(event\.takenBack \|\| times/if (times/'

mutation timer-without-leaflet 'a time limit that nobody typed' \
  engine/work/appointment_log.cpp 'timers come from typed limits*' \
  's/    if \(!limit\) continue;/    if (!limit) { timers.push_back({id, at_s - *now.placed_s, 2700, Say::Look}); continue; }/'

mutation toner-lightens 'a finish lighter than the hair is taken' \
  engine/work/toning.cpp 'a typed finish goes on*' \
  's/if \(typed\.finish\.level > \*level\)/if (typed.finish.level > 12)/'

mutation split-without-parts 'grams are split though not all parts are typed' \
  engine/work/amounts.cpp 'grams are split only*' \
  's/if \(!whole \|\| split\.size\(\) < 2/if (split.size() < 2/'
