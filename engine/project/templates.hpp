// Templates that plans share: a plan made of one holds on to the whole list and copies nothing.
#pragma once

#include <memory>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/project/template.hpp"

namespace gristwright {

class Templates {
  public:
    Templates() = default;
    Templates(std::vector<Template> rows)
        : rows_(std::make_shared<const std::vector<Template>>(std::move(rows))) {}

    const std::vector<Template>& rows() const { return *rows_; }
    auto begin() const { return rows_->begin(); }
    auto end() const { return rows_->end(); }
    std::size_t size() const { return rows_->size(); }
    const Template& operator[](std::size_t i) const { return (*rows_)[i]; }

    // One of these rows, to be held on to.
    std::shared_ptr<const Template> shared(const Template& row) const { return {rows_, &row}; }

  private:
    std::shared_ptr<const std::vector<Template>> rows_ =
        std::make_shared<const std::vector<Template>>();
};

}  // namespace gristwright
