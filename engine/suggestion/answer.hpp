// The answer to a suggestion: does the yarn serve, do the metres reach, and what would have to
// change.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <tuple>
#include <vector>

#include "engine/suggestion/suggestion.hpp"
#include "engine/suitability/judgement.hpp"

namespace gristwright {

// What an answer draws on; all outlive it. Temporaries do not compile.
struct Ground {
    template <class T>
    using Lent = std::reference_wrapper<const T>;  // takes no temporary
    Ground(Lent<YarnProfile> its_yarn, Lent<std::vector<Template>> known_templates,
           Lent<std::vector<WeightClass>> known_classes, Lent<Fabrics> known_fabrics,
           Lent<Equipment> is_owned, Lent<Words> known_words, Request asked)
        : yarn(its_yarn),
          templates(known_templates),
          classes(known_classes),
          fabrics(known_fabrics),
          owned(is_owned),
          words(known_words),
          request(asked) {}

    const YarnProfile& yarn;
    const std::vector<Template>& templates;
    const std::vector<WeightClass>& classes;
    const Fabrics& fabrics;
    const Equipment& owned;
    const Words& words;
    Request request;
};

struct [[nodiscard]] SuggestionAnswer {
    Understood understood;
    bool answered = false;  // false: the article was not understood, or what is missing is asked
    std::string ask;        // what to ask, when not answered

    std::shared_ptr<const Template> article;
    std::string put_into;  // the fabric asked for, which no template of that kind is drawn in
    Judgement judgement;
    std::vector<Obstacle> obstacles;

    enum class Basis { stated_length, stated_mass, template_plan } basis = Basis::template_plan;
    Estimate<Length> need;  // with this yarn
    double certainty = 0;
    Reach reach{};
    Length size;  // asked for, or the template's ideal, or what keeping the stitches gives
    Length left, short_by;  // one of them 0; short_by at the certainty asked
    Length size_that_fits;  // when enough if smaller
    Length
        largest_offered;    // of the sizes it comes in, the largest that fits; 0: none, or not said
    int fewer_repeats = 0;  // of the stitch pattern, that come to the size that fits
    Mass spin_more;         // fibre that closes the shortfall, losses included; else 0

    double tightness = 0;  // at the gauge that was stated; 0: none was
    Gauge suiting;         // the gauge that suits instead; 0: the stated one does, or none was
    bool stitches_kept = false;  // the size changes because the gauge does
    double share = 0;            // of the greatest sett, at the sett that was stated; 0: none was
    ShareBand suiting_share{};
    bool other_craft_reaches = false;  // the same article in the other craft would do
};

// Answers many suggestions for one batch: what depends only on the article is worked out once.
class Answerer {
  public:
    explicit Answerer(const Ground& ground);
    ~Answerer();
    SuggestionAnswer answer(const Suggestion& suggestion);

  private:
    struct Best;
    const Best* best(const std::string& article, std::optional<Craft> craft,
                     const NamedFabric& fabric);

    Ground ground_;
    std::map<std::tuple<std::string, std::optional<Craft>, NamedFabric>, std::unique_ptr<Best>>
        known_;
};

}  // namespace gristwright
