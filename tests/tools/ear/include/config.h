/* What sphinxbase asks of the machine it is built for: WebAssembly, 32 bits, little-endian, one thread. */
#include "sphinx_config.h"
#define STDC_HEADERS 1
#define HAVE_STDINT_H 1
#define HAVE_STDLIB_H 1
#define HAVE_STRING_H 1
#define HAVE_SYS_STAT_H 1
#define HAVE_SYS_TYPES_H 1
#define HAVE_UNISTD_H 1
#define HAVE_SNPRINTF 1
#define HAVE_LIBM 1
