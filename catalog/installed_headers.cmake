# Installs the headers that others include, and those that these include in turn; no other.
cmake_policy(VERSION 3.25)
set(to_do
  catalog/reference/catalogue.hpp  # built_in()
  catalog/reference/ground.hpp
  catalog/reference/own_templates.hpp
  catalog/typed/batch_text.hpp
  catalog/typed/suggestion_text.hpp
  catalog/typed/swatch_text.hpp
  engine/allocation/split.hpp
  engine/caution/caution.hpp
  engine/cloth/hint.hpp
  engine/evidence/hands.hpp
  engine/evidence/next_step.hpp
  engine/evidence/progress.hpp
  engine/evidence/skein_ends.hpp
  engine/evidence/spin.hpp
  engine/evidence/swatch.hpp
  engine/project/role.hpp
  engine/project/words.hpp
  engine/suggestion/answer.hpp
  engine/suggestion/groups.hpp
  engine/suitability/ranking.hpp
  engine/suitability/reasons.hpp
  engine/suitability/recipe.hpp
  engine/units/failure.hpp
  engine/units/reading.hpp
  engine/yarn/count.hpp
  engine/yarn/profile.hpp)
set(done)
while(to_do)
  list(POP_FRONT to_do header)
  if(header IN_LIST done)
    continue()
  endif()
  list(APPEND done ${header})
  file(STRINGS ${root}/${header} included REGEX "^#include \"(engine|catalog)/")
  list(TRANSFORM included REPLACE "#include \"(.*)\"" "\\1")
  list(APPEND to_do ${included})
  cmake_path(GET header PARENT_PATH room)
  file(INSTALL ${root}/${header} DESTINATION ${include_folder}/${room})
endwhile()
