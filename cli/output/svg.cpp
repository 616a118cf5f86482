#include "cli/output/svg.hpp"

#include <fmt/core.h>

#include <algorithm>

#include "cli/output/embedded.hpp"
#include "cli/output/layout.hpp"

namespace gristwright::cli {
namespace {

std::string_view entity(char c) {
    switch (c) {
        case '&':
            return "&amp;";
        case '<':
            return "&lt;";
        case '>':
            return "&gt;";
        case '"':
            return "&quot;";
        case '\'':
            return "&#39;";
        default:
            return {};
    }
}

// Width and height in the size of a letter, so that a page's style sets the scale.
std::string in_letters(double width, double height, double units) {
    return fmt::format("width=\"{}em\" height=\"{}em\" ", decimal(width / units),
                       decimal(height / units));
}

}  // namespace

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : inert(text)) {
        const auto safe = entity(c);
        out += safe.empty() ? std::string_view(&c, 1) : safe;
    }
    return out;
}

std::string shortened(std::string_view text, std::size_t most) {
    if (characters(text) <= most) return std::string(text);
    std::size_t end = 0, count = 0;
    for (; end < text.size(); ++end) {
        const bool starts = (static_cast<unsigned char>(text[end]) & 0xC0) != 0x80;
        if (starts && ++count == most) break;
    }
    return std::string(text.substr(0, end)) + "…";
}

std::string kept_together(std::string_view text) {
    const auto digit = [&](std::size_t i) {
        return i < text.size() && text[i] >= '0' && text[i] <= '9';
    };
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool after_figure = i > 0 && digit(i - 1);
        const bool after_times = i > 1 && text[i - 1] == 'x' && text[i - 2] == ' ' && digit(i + 1);
        out += text[i] == ' ' && (after_figure || after_times) ? "\u00a0" : std::string(1, text[i]);
    }
    return out;
}

std::vector<std::string> broken(std::string_view words, std::size_t most) {
    std::vector<std::string> out{""};
    while (!words.empty()) {
        const auto word = words.substr(0, words.find(' '));
        words.remove_prefix(std::min(words.size(), word.size() + 1));
        auto& line = out.back();
        if (line.empty())
            line = word;
        else if (characters(line) + 1 + characters(word) > most)
            out.emplace_back(word);
        else
            line += " " + std::string(word);
    }
    return out;
}

Svg::Svg(double width, double height, std::string_view title, std::string_view description)
    : width_(width), height_(height), title_(escaped(title)), description_(escaped(description)) {}

Svg& Svg::line(Point a, Point b, std::string_view look) {
    body_ +=
        fmt::format("<path class=\"{}\" d=\"M{}L{}\"/>\n", look, coordinates(a), coordinates(b));
    return *this;
}

Svg& Svg::rect(Point corner, double width, double height, std::string_view look, double round) {
    body_ += fmt::format("<rect class=\"{}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"", look,
                         decimal(corner.x), decimal(corner.y), decimal(std::max(0.0, width)),
                         decimal(std::max(0.0, height)));
    if (round > 0) body_ += fmt::format(" rx=\"{}\"", decimal(round));
    body_ += "/>\n";
    return *this;
}

Svg& Svg::fill(Point corner, double width, double height, std::string_view colour) {
    body_ +=
        fmt::format("<rect fill=\"{}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n", colour,
                    decimal(corner.x), decimal(corner.y), decimal(width), decimal(height));
    return *this;
}

Svg& Svg::circle(Point centre, double radius, std::string_view look) {
    body_ += fmt::format("<circle class=\"{}\" cx=\"{}\" cy=\"{}\" r=\"{}\"/>\n", look,
                         decimal(centre.x), decimal(centre.y), decimal(radius));
    return *this;
}

Svg& Svg::path(const Path& path, std::string_view look) {
    body_ += fmt::format("<path class=\"{}\" d=\"{}\"/>\n", look, path.text());
    return *this;
}

Svg& Svg::text(Point where, std::string_view text, std::string_view look) {
    body_ += fmt::format("<text class=\"{}\" x=\"{}\" y=\"{}\">{}</text>\n", look, decimal(where.x),
                         decimal(where.y), escaped(text));
    return *this;
}

double Svg::lines(Point where, std::string_view words, std::size_t most, std::string_view look) {
    constexpr double line_height = 15;
    for (const auto& line : broken(words, most)) {
        text(where, line, look);
        where.y += line_height;
    }
    return where.y;
}

Svg& Svg::stroke(const Path& path, std::string_view look, double thick, double dash, double gap) {
    body_ += fmt::format("<path class=\"{}\" stroke-width=\"{}\"", look, decimal(thick));
    if (gap > 0) body_ += fmt::format(" stroke-dasharray=\"{} {}\"", decimal(dash), decimal(gap));
    body_ += fmt::format(" d=\"{}\"/>\n", path.text());
    return *this;
}

Svg& Svg::image(Point at, double width, double height, std::string_view address) {
    body_ += fmt::format("<image x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" href=\"{}\"/>\n",
                         decimal(at.x), decimal(at.y), decimal(width), decimal(height), address);
    return *this;
}

Svg& Svg::place(const Svg& inner, Point corner) {
    body_ += fmt::format("<svg x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\">\n{}</svg>\n",
                         decimal(corner.x), decimal(corner.y), decimal(inner.width_),
                         decimal(inner.height_), inner.body_);
    return *this;
}

std::string Svg::opening(std::string_view id, std::string_view more) const {
    return fmt::format(
        "<svg {3}class=\"picture\" role=\"img\" aria-labelledby=\"{0}t {0}d\" "
        "viewBox=\"0 0 {1} {2}\">\n<title id=\"{0}t\">{4}</title>\n<desc id=\"{0}d\">{5}</desc>\n",
        id, decimal(width_), decimal(height_), more, title_, description_);
}

std::string Svg::inlined(std::string_view id) const { return opening(id, "") + body_ + "</svg>\n"; }

std::string Svg::inlined(std::string_view id, double units) const {
    return opening(id, in_letters(width_, height_, units)) + body_ + "</svg>\n";
}

std::string Svg::silent_as(std::string_view size) const {
    return fmt::format(
               "<svg {}class=\"picture\" aria-hidden=\"true\" focusable=\"false\" "
               "viewBox=\"0 0 {} {}\">\n",
               size, decimal(width_), decimal(height_)) +
           body_ + "</svg>\n";
}

std::string Svg::silent() const { return silent_as(""); }

std::string Svg::silent(double units) const {
    return silent_as(in_letters(width_, height_, units));
}

std::string Svg::file_as(std::string_view size) const {
    const auto space = fmt::format("xmlns=\"http://www.w3.org/2000/svg\" {}", size);
    return opening("p", space) + "<style>\n" + std::string(embedded::picture_style) + "</style>\n" +
           fmt::format("<rect class=\"paper\" width=\"{}\" height=\"{}\"/>\n", decimal(width_),
                       decimal(height_)) +
           body_ + "</svg>\n";
}

std::string Svg::file() const {
    return file_as(
        fmt::format("width=\"{}\" height=\"{}\" ", decimal(2 * width_), decimal(2 * height_)));
}

std::string Svg::poster(double points) const {
    return file_as(fmt::format("width=\"{}pt\" height=\"{}pt\" ", decimal(points * width_),
                               decimal(points * height_)));
}

std::string Svg::one_side() const {
    constexpr double wide = 538, high = 732;  // points, within the margins of both
    return poster(std::min({1.0, wide / width_, high / height_}));
}

}  // namespace gristwright::cli
