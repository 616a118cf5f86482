// toml++, compiled here alone.
#define TOML_IMPLEMENTATION
#include <toml++/toml.h>
