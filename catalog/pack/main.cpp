// Run by the build: checks the reviewed text and packs it into the image the program carries.
#include <cstdio>
#include <exception>
#include <filesystem>

#include "catalog/reference/image.hpp"
#include "catalog/reference/source.hpp"

int main(int argc, char** argv) {
    if (argc != 3) return std::fputs("usage: pack FOLDER IMAGE\n", stderr), 64;
    try {
        std::filesystem::remove(argv[2]);
        gristwright::catalog::write_image(gristwright::catalog::read_source(argv[1]), argv[2]);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 65;
    }
}
