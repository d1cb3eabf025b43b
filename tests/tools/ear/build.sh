#!/usr/bin/env bash
# Rebuilds the ear from Debian 12's sources: public/ear/ (what a phone fetches) and src/voice/ear/engine/ (its glue).
# Needs a Debian 12 machine, root for the first line of `tools`, and this project's packages (npm ci).
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../../.." && pwd)
work=${EAR_WORK:-$(mktemp -d)}
public=$root/public/ear
engine=$root/src/voice/ear/engine

POCKETSPHINX=0.8+5prealpha+1
MODEL=0.8+5prealpha+1-15
SPHINXBASE_PACKAGE=0.8+5prealpha+1-16
POCKETSPHINX_PACKAGE=0.8+5prealpha+1-15

tools() {
  command -v emcc >/dev/null ||
    { apt-get update && apt-get install -y --no-install-recommends emscripten; }
}

# Sources come by the machine's own Debian archive, asked for by a list of its own, so that its set-up stays as it is.
with_sources() {
  local lists=$work/apt/lists parts=$work/apt/parts
  mkdir -p "$lists/partial" "$parts" "$work/apt/cache/archives/partial"
  if [ -f /etc/apt/sources.list.d/debian.sources ]; then
    sed 's/^Types:.*/Types: deb deb-src/' /etc/apt/sources.list.d/debian.sources >"$parts/debian.sources"
  else
    sed -n 's/^deb \(.*\)/deb \1\ndeb-src \1/p' /etc/apt/sources.list >"$parts/debian.list"
  fi
  apt-get -qq -o Dir::Etc::SourceList=/dev/null -o "Dir::Etc::SourceParts=$parts" -o "Dir::State::Lists=$lists" \
    -o "Dir::Cache=$work/apt/cache" -o APT::Sandbox::User=root "$@"
}

# The authors' archives as they are: Debian's own patches are left out, and with them their licence.
fetch() {
  cd "$work"
  with_sources update
  with_sources --download-only source "pocketsphinx=$POCKETSPHINX_PACKAGE" "sphinxbase=$SPHINXBASE_PACKAGE"
  with_sources download "pocketsphinx-en-us=$MODEL"
  for name in pocketsphinx sphinxbase; do
    mkdir -p "$name" "$name-debian"
    tar -xzf "${name}_$POCKETSPHINX.orig.tar.gz" --strip-components 1 -C "$name"
    tar -xJf "${name}_$POCKETSPHINX"-*.debian.tar.xz -C "$name-debian"
  done
  dpkg-deb -x pocketsphinx-en-us_*.deb model
}

# The linker warns of calls inside LAPACK whose shapes differ: only transforms that this model has not would make them.
compile() {
  cd "$work"
  unset EM_CACHE # Debian's own is complete and frozen
  export NODE_PATH=$root/node_modules # for acorn, which the linker asks for
  local flags="-O3 -msimd128 -ffast-math -DHAVE_CONFIG_H -w"
  flags+=" -I$here/include -Isphinxbase/include -Ipocketsphinx/include -Ipocketsphinx/src/libpocketsphinx"
  mkdir -p objects
  printf '%s\n' sphinxbase/src/libsphinxbase/{lm,fe,feat,util}/*.c pocketsphinx/src/libpocketsphinx/*.c "$here/ear.c" |
    xargs -P "$(nproc)" -I{} sh -c "emcc $flags -c {} -o objects/\$(basename {} .c).o"
  emcc -O3 -msimd128 objects/*.o -o pocketsphinx.mjs -sMODULARIZE -sEXPORT_ES6 -sENVIRONMENT=web,worker \
    -sDYNAMIC_EXECUTION=0 -sALLOW_MEMORY_GROWTH -sINITIAL_MEMORY=33554432 -sFORCE_FILESYSTEM \
    -sEXPORTED_FUNCTIONS=_malloc,_free -sEXPORTED_RUNTIME_METHODS=FS,UTF8ToString,stringToUTF8,lengthBytesUTF8
}

# The paragraphs of a Debian copyright file that speak of what is in here: not the packaging, not the documentation.
paragraphs() { awk -v RS= -v ORS='\n\n' '!/^Files: (debian|doc)\//' "$1"; }

notices() {
  local part
  part() { printf '\n\n======== %s ========\n\n' "$1"; }
  echo 'What the ear of this app is made of, and the licences it is given under.'
  part "PocketSphinx $POCKETSPHINX (engine)" && cat pocketsphinx/LICENSE && paragraphs pocketsphinx-debian/debian/copyright
  part "sphinxbase $POCKETSPHINX (engine)" && cat sphinxbase/LICENSE && paragraphs sphinxbase-debian/debian/copyright
  part 'Acoustic model en-us' && cat model/usr/share/pocketsphinx/model/en-us/en-us/README
  part 'Pronouncing dictionary cmudict-en-us' && paragraphs model/usr/share/doc/pocketsphinx-en-us/copyright
  part 'RNNoise (denoiser), by @echogarden/rnnoise-wasm 0.2.0' && cat "$root/node_modules/@echogarden/rnnoise-wasm/COPYING"
  part 'Emscripten (glue and runtime)' && echo 'Copyright 2010-2022 The Emscripten Authors' &&
    awk -v RS= '/^License: Expat\n/' /usr/share/doc/emscripten/copyright
  part 'musl (C library)' && cat /usr/share/emscripten/system/lib/libc/musl/COPYRIGHT
}

publish() {
  cd "$work"
  local data=model/usr/share/pocketsphinx/model/en-us
  mkdir -p "$public" "$engine"
  node "$here/pack.mjs" "$data/en-us" "$data/cmudict-en-us.dict" pocketsphinx.wasm \
    "$root/node_modules/@echogarden/rnnoise-wasm/rnnoise.wasm" "$public/ear.pack"
  # The wasm is handed in, from the pack: no bundler shall look for it beside the glue.
  sed 's/new URL("pocketsphinx.wasm",import.meta.url).toString()/"pocketsphinx.wasm"/' pocketsphinx.mjs \
    >"$engine/pocketsphinx.js"
  notices | sed 's/[[:space:]]*$//' | cat -s >"$public/NOTICES.txt"
  (cd "$public" && sha256sum ear.pack NOTICES.txt ../../src/voice/ear/engine/pocketsphinx.js >SHA256SUMS)
  printf '{\n  "bytes": %s,\n  "sha256": "%s"\n}\n' "$(stat -c %s "$public/ear.pack")" \
    "$(sha256sum "$public/ear.pack" | cut -d' ' -f1)" >"$engine/pack.json"
}

tools
fetch
compile
publish
