#include <set>

#include "catalog/notebook/exchange.hpp"
#include "catalog/text/csv.hpp"

namespace gristwright::catalog {
namespace {

void add_line(std::string& out, const std::vector<std::string>& cells) {
    const char* comma = "";
    for (const auto& cell : cells) {
        out += comma + csv_cell(cell);
        comma = ",";
    }
    out += "\r\n";
}

std::string joined(const BatchText& text, const std::string& key) {
    std::string out;
    const auto found = text.fields.find(key);
    if (found == text.fields.end()) return out;
    for (const auto& one : found->second) out += (out.empty() ? "" : "; ") + one.text;
    return out;
}

std::set<std::string> keys_of(const std::vector<KeptBatch>& batches) {
    std::set<std::string> out;
    for (const auto& batch : batches)
        for (const auto& [key, texts] : batch.text.fields) out.insert(key);
    return out;
}

}  // namespace

std::string to_csv(const std::vector<KeptBatch>& batches) {
    const auto keys = keys_of(batches);
    std::vector<std::string> header{"batch", "skein", "length", "mass", "measured"};
    header.insert(header.end(), keys.begin(), keys.end());
    std::string out;
    add_line(out, header);
    for (const auto& batch : batches) {
        auto skeins = batch.text.skeins;
        if (skeins.empty()) skeins.emplace_back();  // a batch always has a line
        for (const auto& s : skeins) {
            std::vector<std::string> cells{batch.name, s.name.text, s.length.text, s.mass.text,
                                           s.state.text};
            for (const auto& key : keys) cells.push_back(joined(batch.text, key));
            add_line(out, cells);
        }
    }
    return out;
}

}  // namespace gristwright::catalog
