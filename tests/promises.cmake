# Command line manners, what must and must not compile, delivery, promises: see docs/promises.md.
set(here ${CMAKE_CURRENT_LIST_DIR})
set(manners ${Python3_EXECUTABLE} ${here}/cli/help/manners.py)
set(on_program $<TARGET_FILE:gristwright> ${PROJECT_SOURCE_DIR})
add_test(NAME "promise: every help is at most 79 columns wide and says one thing everywhere"
  COMMAND ${manners} help ${on_program})
add_test(NAME "promise: every manual page passes mandoc's examination and holds every option"
  COMMAND ${manners} manual ${on_program})
add_test(NAME "promise: the example in every help works"
  COMMAND ${manners} examples ${on_program})
add_test(NAME "promise: a slip at any level gets the word that was meant"
  COMMAND ${manners} suggestions ${on_program})
add_test(NAME "promise: docs/reference.md is what the program says"
  COMMAND ${manners} reference ${on_program})
add_test(NAME "promise: every command has its session"
  COMMAND ${manners} folders ${on_program})
add_test(NAME "promise: bash completes commands, options, their words, templates and batches"
  COMMAND bash ${here}/cli/help/completion.sh ${on_program})

set(kept ${Python3_EXECUTABLE} ${here}/cli/kept.py)
add_test(NAME "promise: exit codes are few and mean one thing, and complaints keep off the answer"
  COMMAND ${kept} codes ${on_program})
add_test(NAME "promise: colour only on a terminal that wants it"
  COMMAND ${kept} colour ${on_program})
add_test(NAME "promise: two programs at once, the second says busy"
  COMMAND ${kept} busy ${on_program})
add_test(NAME "promise: the answer is the same in any locale"
  COMMAND ${kept} locale ${on_program})
add_test(NAME "promise: a closed pipe is noticed"
  COMMAND ${kept} pipe ${on_program})
add_test(NAME "promise: the program links no socket"
  COMMAND ${kept} socket ${on_program})
set_tests_properties("promise: the program links no socket" PROPERTIES SKIP_RETURN_CODE 77)

set(compile ${CMAKE_CXX_COMPILER} ${PROJECT_SOURCE_DIR})
add_test(NAME "promise: every header compiles alone, twice"
  COMMAND ${Python3_EXECUTABLE} ${here}/compile/headers.py ${compile}
    ${PROJECT_BINARY_DIR}/headers-compiled-alone)
add_test(NAME "promise: metres plus grams does not compile"
  COMMAND ${Python3_EXECUTABLE} ${here}/compile/refused.py ${compile})

set(sanitizer "")
if(GRISTWRIGHT_SANITIZE)
  set(sanitizer -fsanitize=address,undefined)
endif()
set(delivery ${Python3_EXECUTABLE} ${here}/delivery/delivery.py)
add_test(NAME "promise: what is installed works, and others can build on the engine"
  COMMAND ${delivery} installed ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR}
    ${PROJECT_BINARY_DIR}/delivery/installed "${sanitizer}")
add_test(NAME "promise: the Debian package works unpacked, and packs alike twice"
  COMMAND ${delivery} package ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR}
    ${PROJECT_BINARY_DIR}/delivery/package)
add_test(NAME "promise: the same input gives the same bytes"
  COMMAND ${Python3_EXECUTABLE} ${here}/delivery/reproducible.py $<TARGET_FILE:gristwright>
    $<TARGET_FILE:gristwright_pack> ${PROJECT_SOURCE_DIR})
add_test(NAME "promise: every promise has its test"
  COMMAND ${Python3_EXECUTABLE} ${here}/promises.py ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR})
