/* The part of the configuration that sphinxbase's own headers read. */
#define SIZEOF_LONG 4
#define HAVE_LONG_LONG 1
#define SIZEOF_LONG_LONG 8
