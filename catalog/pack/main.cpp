// Run by the build: checks the reviewed text and packs it into the image the program carries.
#include <cstdio>
#include <exception>
#include <fstream>

#include "catalog/reference/image.hpp"
#include "catalog/reference/source.hpp"

int main(int argc, char** argv) {
    if (argc != 3) return std::fputs("usage: pack FOLDER IMAGE\n", stderr), 64;
    try {
        std::ofstream file(argv[2], std::ios::binary);
        file << gristwright::catalog::image_of(gristwright::catalog::read_source(argv[1]));
        if (!file.flush()) return std::fprintf(stderr, "cannot write %s\n", argv[2]), 74;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 65;
    }
}
