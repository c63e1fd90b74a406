# What the scripts that build have in common; they read it. Wants `root`.

# The compiler's cache. The sloppiness lets files with a precompiled header in; such a header
# names its own folder, so that two checkouts, or the mutated copy, share little. Dependencies
# out of the compiler's own list and hashes kept by file spare preprocessing and reading such
# a header for each file, which took as long as compiling.
export CCACHE_BASEDIR=$root CCACHE_NOHASHDIR=true CCACHE_SLOPPINESS=pch_defines,time_macros
export CCACHE_DEPEND=true CCACHE_INODECACHE=true

# configure PRESET [CMAKE-OPTIONS]: sets up build/PRESET. A folder of another compiler is
# begun anew: CMake would keep the new compiler and drop every other setting of the preset.
configure() {
  local preset=$1 cache=$root/build/$1/CMakeCache.txt fresh=()
  shift
  if [[ -f $cache ]] && ! grep -q '^CMAKE_CXX_COMPILER:.*clang++' "$cache"; then fresh=(--fresh); fi
  (cd "$root" && cmake --preset "$preset" "${fresh[@]}" -DCMAKE_CXX_COMPILER_LAUNCHER="$(command -v ccache || true)" "$@")
}
