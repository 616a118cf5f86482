// {"notebook": 1, "batches": [{"name": .., "skeins": [..], "fields": {..}, "swatches": [..],
//   "project": {.., "weighings": [..]}, "suggestions": [..]}]}; a skein's "own" and a project's
//   "part", "beside" and "yarn" stand only where there is something; a text with its place is
//   {"text": .., "where": ..}.
#include <fmt/core.h>

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <set>

#include "catalog/notebook/exchange.hpp"

namespace gristwright::catalog {
namespace {

using Out = nlohmann::ordered_json;
using In = nlohmann::json;

Out json_of(const Written& w) { return {{"text", w.text}, {"where", w.where}}; }

Out json_of(const Texts& fields);

Out json_of(const SkeinText& s) {
    Out out{{"name", json_of(s.name)},
            {"length", json_of(s.length)},
            {"mass", json_of(s.mass)},
            {"measured", json_of(s.state)}};
    if (!s.own.empty()) out["own"] = json_of(s.own);
    return out;
}

Out json_of(const SwatchText& s) {
    Out measured = Out::object();
    for (const auto& [key, text] : s.measured) measured[key] = text;
    return {{"kind", s.kind == SwatchText::Kind::knitted ? "knitted" : "woven"},
            {"date", s.date},
            {"own_hands", s.own_hands},
            {"measured", measured}};
}

Out json_of(const KeptSuggestion& s) { return Out(s); }

Out json_of(const WeighingText& w) {
    return {{"row", w.row}, {"length", w.length}, {"ball", w.ball}, {"date", w.date}};
}

Out json_of(const KeptBatch& b);

template <class Item>
Out list_of(const std::vector<Item>& items) {
    Out out = Out::array();
    for (const auto& item : items) out.push_back(json_of(item));
    return out;
}

Out json_of(const Texts& fields) {
    Out out = Out::object();
    for (const auto& [key, texts] : fields) out[key] = list_of(texts);
    return out;
}

Out json_of(const ProjectText& p, const std::vector<WeighingText>& weighings) {
    Out out{{"template", p.template_name},
            {"size", p.size},
            {"certainty", p.certainty},
            {"started", p.started}};
    const std::pair<const char*, const std::string*> unusual[] = {
        {"part", &p.part}, {"beside", &p.beside}, {"yarn", &p.yarn}};
    for (const auto& [key, text] : unusual)
        if (!text->empty()) out[key] = *text;
    out["weighings"] = list_of(weighings);
    return out;
}

Out json_of(const KeptBatch& b) {
    Out out{{"name", b.name},
            {"skeins", list_of(b.text.skeins)},
            {"fields", json_of(b.text.fields)},
            {"swatches", list_of(b.swatches)}};
    if (b.project) out["project"] = json_of(*b.project, b.weighings);
    if (!b.suggestions.empty()) out["suggestions"] = list_of(b.suggestions);
    return out;
}

// A value and the way to it, for complaints: "batches[2].name".
struct Node {
    const In& value;
    std::string way;

    NotebookRefused wrong(std::string_view why) const {
        return NotebookRefused(
            fmt::format("the export cannot be read: {}: {}", way.empty() ? "the text" : way, why));
    }
    bool has(const char* key) const { return value.contains(key); }
    Node operator[](const std::string& key) const {
        const auto found = value.find(key);
        if (found == value.end()) throw wrong(fmt::format("'{}' is missing", key));
        return {*found, way.empty() ? key : fmt::format("{}.{}", way, key)};
    }
    std::string text() const {
        if (!value.is_string()) throw wrong("must be text in quotes");
        return value.get<std::string>();
    }
    bool yes() const {
        if (!value.is_boolean()) throw wrong("must be true or false");
        return value.get<bool>();
    }
    std::string text(const char* key) const { return (*this)[key].text(); }
    void only(std::initializer_list<std::string_view> keys) const {
        if (!value.is_object()) throw wrong("must be {...}");
        for (const auto& [key, unused] : value.items())
            if (std::find(keys.begin(), keys.end(), key) == keys.end())
                throw wrong(fmt::format("'{}' is not a key here", key));
    }
    template <class Read>
    auto list(Read read) const {
        if (!value.is_array()) throw wrong("must be [...]");
        std::vector<decltype(read(*this))> out;
        for (std::size_t i = 0; i < value.size(); ++i)
            out.push_back(read(Node{value[i], fmt::format("{}[{}]", way, i)}));
        return out;
    }
    template <class Each>
    void for_each_key(Each each) const {
        if (!value.is_object()) throw wrong("must be {...}");
        for (const auto& [key, unused] : value.items()) each(key, (*this)[key]);
    }
};

Written written(const Node& n) {
    n.only({"text", "where"});
    return {n.text("text"), n.text("where")};
}

Texts texts(const Node& n) {
    Texts out;
    n.for_each_key(
        [&](const std::string& key, const Node& each) { out[key] = each.list(written); });
    return out;
}

SkeinText skein(const Node& n) {
    n.only({"name", "length", "mass", "measured", "own"});
    SkeinText out{
        written(n["name"]), written(n["length"]), written(n["mass"]), written(n["measured"]), {}};
    if (n.has("own")) out.own = texts(n["own"]);
    for (const auto& [key, unused] : out.own)
        if (std::find(own_keys().begin(), own_keys().end(), key) == own_keys().end())
            throw n["own"].wrong(fmt::format("'{}' is not a key here", key));
    return out;
}

SwatchText::Kind kind(const Node& n) {
    const auto word = n.text();
    if (word == "knitted") return SwatchText::Kind::knitted;
    if (word == "woven") return SwatchText::Kind::woven;
    throw n.wrong(fmt::format("'{}' is neither knitted nor woven", word));
}

SwatchText swatch(const Node& n) {
    n.only({"kind", "date", "own_hands", "measured"});
    SwatchText out{kind(n["kind"]), {}, n.text("date")};
    if (n.has("own_hands")) out.own_hands = n["own_hands"].yes();  // form 1 has none
    n["measured"].for_each_key(
        [&](const std::string& key, const Node& text) { out.measured[key] = text.text(); });
    return out;
}

WeighingText weighing(const Node& n) {
    n.only({"row", "length", "ball", "date"});
    return {n.text("row"), n.text("length"), n.text("ball"), n.text("date")};
}

KeptSuggestion suggestion(const Node& n) {
    KeptSuggestion out;
    n.for_each_key([&](const std::string& key, const Node& text) { out[key] = text.text(); });
    return out;
}

KeptBatch batch(const Node& n) {
    n.only({"name", "skeins", "fields", "swatches", "project", "suggestions"});
    KeptBatch out;
    out.name = n.text("name");
    out.text.skeins = n["skeins"].list(skein);
    out.text.fields = texts(n["fields"]);
    out.swatches = n["swatches"].list(swatch);
    if (n.has("suggestions")) out.suggestions = n["suggestions"].list(suggestion);
    if (!n.has("project")) return out;
    const auto p = n["project"];
    p.only({"template", "size", "certainty", "started", "part", "beside", "yarn", "weighings"});
    const auto unusual = [&](const char* key) { return p.has(key) ? p.text(key) : std::string(); };
    out.project = {p.text("template"), p.text("size"),    p.text("certainty"), p.text("started"),
                   unusual("part"),    unusual("beside"), unusual("yarn")};
    out.weighings = p["weighings"].list(weighing);
    return out;
}

// The library takes the last of two equal keys in silence; we do not.
In parse_strictly(std::string_view text) {
    std::vector<std::set<std::string>> open;
    const auto watch = [&](int, In::parse_event_t event, In& value) {
        if (event == In::parse_event_t::object_start) open.emplace_back();
        if (event == In::parse_event_t::object_end) open.pop_back();
        if (event == In::parse_event_t::key && !open.back().insert(value.get<std::string>()).second)
            throw NotebookRefused(fmt::format(
                "the export cannot be read: '{}' stands twice in {{}}", value.get<std::string>()));
        return true;
    };
    try {
        return In::parse(text, watch);
    } catch (const In::parse_error& error) {
        throw NotebookRefused(
            fmt::format("the export cannot be read: it is no JSON at byte {}", error.byte));
    } catch (const In::out_of_range&) {
        throw NotebookRefused("the export cannot be read: a number in it is larger than any");
    }
}

}  // namespace

std::string to_json(const std::vector<KeptBatch>& batches) {
    try {
        return Out{{"notebook", exchange_version}, {"batches", list_of(batches)}}.dump(2) + "\n";
    } catch (const Out::type_error&) {
        throw NotebookRefused(
            "a text in the notebook is not UTF-8, so the file is damaged: go back to a backup, or "
            "look with gristwright batch show what can still be read");
    }
}

std::vector<KeptBatch> from_json(std::string_view text) {
    const auto parsed = parse_strictly(text);
    const Node top{parsed, ""};
    top.only({"notebook", "batches"});
    const auto version = top["notebook"];
    if (!version.value.is_number_integer()) throw version.wrong("must be a whole number");
    if (version.value < 1 || version.value > exchange_version)
        throw version.wrong(fmt::format("the export has form {}, this program reads forms 1 to {}",
                                        version.value.dump(), exchange_version));
    return top["batches"].list(batch);
}

}  // namespace gristwright::catalog
