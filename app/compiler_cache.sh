# How the compiler's cache is used; read by the scripts that build. Wants `root`.
# Paths are relative to the checkout, so that the mutated copy shares what is kept. The
# sloppiness lets files with a precompiled header in; dependencies out of the compiler's own
# list and hashes kept by file spare preprocessing and reading such a header for each file,
# which took as long as compiling.
export CCACHE_BASEDIR=$root CCACHE_NOHASHDIR=true CCACHE_SLOPPINESS=pch_defines,time_macros
export CCACHE_DEPEND=true CCACHE_INODECACHE=true
