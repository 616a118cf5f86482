// The answer to a suggestion: does the yarn serve, do the metres reach, and what would have to
// change.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "engine/project/body.hpp"
#include "engine/project/demand_for.hpp"
#include "engine/suggestion/suggestion.hpp"
#include "engine/suggestion/understand.hpp"
#include "engine/suitability/judgement.hpp"

namespace gristwright {

// What an answer draws on; all outlive it, the text of the words too. Other temporaries do not
// compile.
struct Ground {
    template <class T>
    using Lent = std::reference_wrapper<const T>;  // takes no temporary
    Ground(Lent<YarnProfile> its_yarn, Lent<std::vector<Template>> known_templates,
           Lent<ArticleKinds> known_kinds, Lent<std::vector<WeightClass>> known_classes,
           Lent<Fabrics> known_fabrics, Lent<Equipment> is_owned, std::string_view known_words,
           Lent<std::vector<BodySize>> known_bodies, Lent<std::vector<DemandFor>> known_needs,
           Request asked)
        : yarn(its_yarn),
          templates(known_templates),
          kinds(known_kinds),
          classes(known_classes),
          fabrics(known_fabrics),
          owned(is_owned),
          words(known_words),
          bodies(known_bodies),
          needs(known_needs),
          request(asked) {}

    const YarnProfile& yarn;
    const std::vector<Template>& templates;
    const ArticleKinds& kinds;
    const std::vector<WeightClass>& classes;
    const Fabrics& fabrics;
    const Equipment& owned;
    std::string_view words;  // the table, as Lexicon reads it; it stays with its owner
    const std::vector<BodySize>& bodies;
    const std::vector<DemandFor>& needs;  // for an article that is answered in another fabric
    Request request;
    // This yarn as two strands of itself, held double or plied again; nothing: not reckoned.
    std::function<YarnProfile(Role)> as_two_strands = {};
};

// One of the things that were wanted, as it was looked at.
struct ThingAnswer {
    Wanted wanted;
    std::shared_ptr<const Template> article;  // none: no template makes it, nor anything near
    bool as_nearest = false;                  // a template of the kind that comes nearest
    bool form_missed = false;                 // no template of the form that was named
    Estimate<Length> need;                    // of all that were counted
    Length size;                              // of one
    std::string body;                         // whose the size is; empty: nobody's
    Length unfit;          // a size that was said and that no body has; 0: none was
    bool of_warp = false;  // the size is what comes off the warp that was said
    bool in_inches = false, in_cm = false;  // the size had no unit, and fits in this one alone
    bool of_shoe = false;  // the size is that of the foot in the shoe that was said
    Reach reach{};
};

struct [[nodiscard]] SuggestionAnswer {
    Taken taken;
    bool answered =
        false;        // false: no idea, a question about the yarn, or what is missing is asked
    std::string ask;  // what to ask, when that is what is missing

    std::vector<ThingAnswer> things;  // each of what was wanted, in the order of saying
    std::size_t main = 0;             // of things: the one whose numbers follow

    std::shared_ptr<const Template> article;
    std::string put_into;  // a fabric that was asked for, where our template is in another
    std::string fabric;    // of its largest piece
    Judgement judgement;
    std::vector<Obstacle> obstacles;

    enum class Basis { stated_length, stated_mass, template_plan } basis = Basis::template_plan;
    Estimate<Length> need;  // with this yarn, for all that is wanted together
    double certainty = 0;
    Reach reach{};
    Length size;  // asked for, or the template's ideal, or what keeping the stitches gives
    Length left, short_by;  // one of them 0; short_by at the certainty asked
    Length margin;          // of short_by: what the certainty asked sets aside
    Length size_that_fits;  // when enough if smaller
    Length
        largest_offered;    // of the sizes it comes in, the largest that fits; 0: none, or not said
    int fewer_repeats = 0;  // of the stitch pattern, that come to the size that fits
    Mass spin_more;         // fibre that closes the shortfall, losses included; else 0

    double tightness = 0;  // at the gauge that was stated; 0: none was
    Gauge suiting;         // the gauge that suits instead; 0: the stated one does, or none was
    // Of what was stated for another yarn: its gauge; else its stitches, so that the size changes,
    // or its size, so that the stitches do.
    enum class Kept { gauge, stitches, size } kept = Kept::gauge;
    double share = 0;  // of the greatest sett, at the sett that was stated; 0: none was
    ShareBand suiting_share{};
    Length stated;                // that it is said to take; 0: none was stated
    bool gauge_of_class = false;  // tightness is at the usual gauge of the weight it was meant for
    Mass stated_mass;             // that it is said to take; 0: none was stated
    Length largest;    // that the metres cover at the certainty asked, of the sizes it is made in
    int possible = 0;  // how many such the metres are enough for
    Length usual_needle;  // knitted; 0: woven
    Gauge usual_gauge;
    Length off_loom;  // the widest finished cloth of the loom that was named; 0: none was
    Sett usual_sett;  // woven; 0: knitted
    Wearer made_for = Wearer::unsaid;  // of the template: a baby, a child, an animal, or anybody
    bool plain = true;                 // in a cloth that is taken where nobody names one
    Length at_hand;        // yarn that they ask of, or the share of this that they name; 0: none
    Length at_hand_lacks;  // of the need, with what the certainty asked sets aside; 0: it would do
    Length wide;           // of its own, where a length is measured; 0: of another shape
    Length part;           // of the need, for the part alone that was named; 0: none, or unknown
    bool part_reaches = false;   // with the certainty asked
    bool role_reckoned = false;  // the metres are those of the part this yarn plays

    std::shared_ptr<const Template>
        other_craft;  // the same article in the other craft, if there is one
    Estimate<Length> other_need;
    Reach other_reach{};
    bool other_craft_reaches = false;  // and would serve, where this one falls short
};

// Answers many suggestions for one batch: what depends only on the article is worked out once.
class Answerer {
  public:
    explicit Answerer(const Ground& ground);
    ~Answerer();
    SuggestionAnswer answer(const Suggestion& suggestion);

  private:
    struct Best;
    struct Wish;
    void resolve(Taken& taken) const;
    std::string body_of(const Wanted& wanted, const Taken& taken) const;
    ThingAnswer with_its_unit(ThingAnswer thing, Taken& taken, std::optional<Craft> craft,
                              Best*& found);
    bool fits_somebody(const Template& article, Length size) const;
    const YarnProfile& yarn_as(Role role);
    Best& realised(const Template& article, const std::string& fabric, Role role, Sett sett);
    Best* best(const Wish& wish);
    Length size_wished(const Wish& wish, const Template& article) const;
    ThingAnswer look_at(const Wanted& wanted, const Taken& taken, std::optional<Craft> craft,
                        Best*& found);
    void add_other_craft(const Taken& taken, SuggestionAnswer& out);
    void reckon(const Suggestion& s, Best& found, SuggestionAnswer& out);
    const Taken& read(const std::string& idea);

    Ground ground_;
    Lexicon lexicon_;
    Stemmer stemmer_;
    std::unordered_map<std::string, Taken> read_;  // ideas read so far: the same are sent often
    std::map<Role, YarnProfile> strands_;
    std::map<std::tuple<const Template*, std::string, Role, double>, std::unique_ptr<Best>> known_;
};

}  // namespace gristwright
