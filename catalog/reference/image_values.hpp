// Values as the image holds them: numbers in their bytes, the lowest first; texts and lists behind
// their length; a row column by column.
#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

#include "catalog/reference/image_columns.hpp"

namespace gristwright::catalog {

template <class T>
concept HasColumns = requires(T& row) { columns(row, [](auto&...) {}); };
template <class T>
concept Measure = requires(T measure) { T::from_si(measure.si()); };
template <class T>
concept Whole = std::is_integral_v<T> || std::is_enum_v<T>;

class ImageWriter {
  public:
    std::string bytes;

    void put(const HasColumns auto& row) {
        columns(row, [this](const auto&... column) { (this->put(column), ...); });
    }
    void put(Whole auto number) { put_bytes(static_cast<std::uint32_t>(number)); }
    void put(double number) { put_bytes(std::bit_cast<std::uint64_t>(number)); }
    void put(const Measure auto& measure) { put(measure.si()); }
    void put(const std::string& text) {
        put(text.size());
        bytes += text;
    }
    void put(const PackedText& text) { put(std::string(text.text())); }
    template <class T>
    void put(const std::shared_ptr<const T>& row) {
        put(*row);
    }
    template <class T>
    void put(const std::optional<T>& value) {
        put(value.has_value());
        if (value) put(*value);
    }
    template <class T, std::size_t n>
    void put(const std::array<T, n>& values) {
        for (const auto& value : values) put(value);
    }
    template <class T>
    void put(const std::vector<T>& values) {
        put(values.size());
        for (const auto& value : values) put(value);
    }
    template <class T>
    void put(const std::map<std::string, T, std::less<>>& values) {
        put(values.size());
        for (const auto& [key, value] : values) put(key), put(value);
    }

  private:
    template <class Bits>
    void put_bytes(Bits bits) {
        for (std::size_t i = 0; i < sizeof bits; ++i)
            bytes += static_cast<char>(bits >> (8 * i) & 0xffU);
    }
};

// Throws std::runtime_error where the image ends too early.
class ImageReader {
  public:
    explicit ImageReader(std::span<const unsigned char> image) : left_(image) {}

    bool at_end() const { return left_.empty(); }

    void take(HasColumns auto& row) {
        columns(row, [this](auto&... column) { (this->take(column), ...); });
    }
    template <Whole T>
    void take(T& number) {
        number = static_cast<T>(static_cast<std::int32_t>(bits<std::uint32_t>()));
    }
    void take(double& number) { number = std::bit_cast<double>(bits<std::uint64_t>()); }
    template <Measure T>
    void take(T& measure) {
        measure = T::from_si(std::bit_cast<double>(bits<std::uint64_t>()));
    }
    void take(std::string& text) { text = std::string(view()); }
    void take(PackedText& text) { text = PackedText::part_of(view()); }
    template <class T>
    void take(std::shared_ptr<const T>& row) {
        T read;
        take(read);
        row = std::make_shared<const T>(std::move(read));
    }
    template <class T>
    void take(std::optional<T>& value) {
        if (size() > 0) take(value.emplace());
    }
    template <class T, std::size_t n>
    void take(std::array<T, n>& values) {
        for (auto& value : values) take(value);
    }
    template <class T>
    void take(std::vector<T>& values) {
        values.resize(size());
        for (auto& value : values) take(value);
    }
    template <class T>
    void take(std::map<std::string, T, std::less<>>& values) {
        std::string key;
        for (auto n = size(); n > 0; --n) {
            take(key);
            take(values.emplace_hint(values.end(), key, T{})->second);
        }
    }

  private:
    std::span<const unsigned char> some(std::size_t count) {
        if (count > left_.size()) throw std::runtime_error("the built-in catalogue is damaged");
        const auto out = left_.first(count);
        left_ = left_.subspan(count);
        return out;
    }
    std::string_view view() {
        const auto from = some(size());
        return {reinterpret_cast<const char*>(from.data()), from.size()};
    }
    template <class Bits>
    Bits bits() {
        const auto from = some(sizeof(Bits));
        return [&]<std::size_t... i>(std::index_sequence<i...>) {
            return ((Bits{from[i]} << (8 * i)) | ...);
        }(std::make_index_sequence<sizeof(Bits)>{});
    }
    // Of what follows: every element takes a byte at least, so that no more are made than are
    // there.
    std::size_t size() {
        const std::size_t out = bits<std::uint32_t>();
        if (out > left_.size()) throw std::runtime_error("the built-in catalogue is damaged");
        return out;
    }

    std::span<const unsigned char> left_;
};

}  // namespace gristwright::catalog
