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

std::string joined(const Texts& fields, const std::string& key) {
    std::string out;
    const auto found = fields.find(key);
    if (found == fields.end()) return out;
    for (const auto& one : found->second) out += (out.empty() ? "" : "; ") + one.text;
    return out;
}

std::set<std::string> keys_of(const std::vector<KeptBatch>& batches) {
    std::set<std::string> out;
    for (const auto& batch : batches) {
        for (const auto& [key, texts] : batch.text.fields) out.insert(key);
        for (const auto& skein : batch.text.skeins)
            for (const auto& [key, texts] : skein.own) out.insert(key);
    }
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
            for (const auto& key : keys)  // a skein's own stand in place of its batch's
                cells.push_back(joined(s.own.count(key) ? s.own : batch.text.fields, key));
            add_line(out, cells);
        }
    }
    return out;
}

}  // namespace gristwright::catalog
