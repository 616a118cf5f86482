// The cloth at the head of the page: of the best article near and across the table, beside the same
// from a smooth combed yarn; of the best in the other craft, near.
#include "cli/output/cloth_picture.hpp"
#include "cli/output/page_parts.hpp"

namespace gristwright::cli {
namespace {

const JudgedPlan* best_of(const std::vector<const JudgedPlan*>& best, Craft craft) {
    for (const auto* one : best)
        if (one->plan.article->craft == craft) return one;
    return nullptr;
}

}  // namespace

void add_cloth(PageData& data, const Ranked& ranked, const Question& q) {
    const auto best = all_made(ranked);
    if (best.empty()) return;
    const auto& first = *best.front();
    const auto views = cloth_views(first.plan, q);
    PageData out;
    out.set("title", first.plan.article->title);
    out.set("answer", views.answer);
    out.set("about", views.about);
    out.set("near", views.near.inlined("clothnear"));
    out.set("yours", views.yours.inlined("clothyours"));
    out.set("combed", views.combed.inlined("clothcombed"));
    const bool knitted = first.plan.article->craft == Craft::knitted;
    if (const auto* other = best_of(best, knitted ? Craft::woven : Craft::knitted)) {
        PageData second;
        const auto near = cloth_near(other->plan, q);
        second.set("title", other->plan.article->title);
        second.set("about", near.about);
        second.set("near", near.near.inlined("clothother"));
        out.set("other", second);
    }
    data.set("cloth", out);
}

}  // namespace gristwright::cli
