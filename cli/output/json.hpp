// The answers as JSON: SI units named in every key, finite numbers, keys in a fixed order. The
// schemas stand in docs/schema/.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "cli/output/describe.hpp"
#include "engine/suitability/best_set.hpp"

namespace gristwright::cli {

using Json = nlohmann::ordered_json;

inline constexpr int json_version = 1;

// {"gristwright": 1, "command": "makes"}
Json json_answer(const std::string& command);
Json to_json(const Question& q);  // the batch and its yarn
// The same; of several yarns only what they are together, which no mean of them is part of.
Json whole_to_json(const Question& q);
Json to_json(const JudgedPlan& judged, const YarnProfile& yarn);
Json to_json(const BestSet& set);
Json number(double value);  // six figures; null when not finite
Json range(const Estimate<double>& e);
Json texts(const std::vector<std::string>& list);  // inert
std::string dumped(const Json& json);

}  // namespace gristwright::cli
