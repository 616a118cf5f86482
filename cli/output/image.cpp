#include "cli/output/image.hpp"

#define STB_IMAGE_WRITE_IMPLEMENTATION
#define STB_IMAGE_WRITE_STATIC
#define STBI_WRITE_NO_STDIO
#include <stb/stb_image_write.h>

#include <boost/archive/iterators/base64_from_binary.hpp>
#include <boost/archive/iterators/transform_width.hpp>

namespace gristwright::cli {
namespace {

constexpr int quality = 70;  // of 100: no blocks to be seen at the size they are shown

void append(void* to, void* bytes, int count) {
    static_cast<std::string*>(to)->append(static_cast<const char*>(bytes),
                                          static_cast<std::size_t>(count));
}

std::string base64(std::string bytes) {
    using namespace boost::archive::iterators;
    using Letters = base64_from_binary<transform_width<std::string::const_iterator, 6, 8>>;
    const auto missing = (3 - bytes.size() % 3) % 3;
    bytes.append(missing, '\0');
    std::string out(Letters(bytes.cbegin()), Letters(bytes.cend()));
    return out.replace(out.size() - missing, missing, missing, '=');
}

}  // namespace

std::string data_address(const lay::Picture& picture) {
    std::string bytes;
    stbi_write_jpg_to_func(append, &bytes, picture.width, picture.height, 3, picture.rgb.data(),
                           quality);
    return "data:image/jpeg;base64," + base64(std::move(bytes));
}

}  // namespace gristwright::cli
