# Command line manners, what must and must not compile, delivery, promises: see docs/promises.md.
set(here ${CMAKE_CURRENT_LIST_DIR})
function(promise name)  # and the command that proves it
  add_test(NAME "promise: ${name}" COMMAND ${ARGN})
endfunction()

set(manners ${Python3_EXECUTABLE} ${here}/cli/help/manners.py)
set(on_program $<TARGET_FILE:gristwright> ${PROJECT_SOURCE_DIR})
promise("every help is at most 79 columns wide and says one thing everywhere"
  ${manners} help ${on_program})
promise("every manual page passes mandoc's examination and holds every option"
  ${manners} manual ${on_program})
promise("the example in every help works"
  ${manners} examples ${on_program})
promise("a slip at any level gets the word that was meant"
  ${manners} suggestions ${on_program})
promise("docs/reference.md is what the program says"
  ${manners} reference ${on_program})
promise("every command has its session"
  ${manners} folders ${on_program})
promise("bash completes commands, options, their words, templates and batches"
  bash ${here}/cli/help/completion.sh ${on_program})

set(kept ${Python3_EXECUTABLE} ${here}/cli/kept.py)
promise("exit codes are few and mean one thing, and complaints keep off the answer"
  ${kept} codes ${on_program})
promise("colour only on a terminal that wants it"
  ${kept} colour ${on_program})
promise("writing never destroys what a command reads or keeps"
  ${kept} writing ${on_program})
promise("one bad file of a person's own is noted and stops nothing else"
  ${kept} own ${on_program})
promise("a weighing is checked and kept at once, however many come together"
  ${kept} at_once ${on_program})
promise("a change that is kept is told even where its answer cannot be written"
  ${kept} stands ${on_program})
promise("a damaged notebook gives back what can be read"
  ${kept} rescue ${on_program})
promise("two programs at once, the second says busy"
  ${kept} busy ${on_program})
promise("long work says how far it is and can be interrupted"
  ${kept} lifesign ${on_program})
promise("the answer is the same in any locale"
  ${kept} locale ${on_program})
promise("a closed pipe is noticed"
  ${kept} pipe ${on_program})
promise("the program links no socket"
  ${kept} socket ${on_program})
set_tests_properties("promise: the program links no socket" PROPERTIES SKIP_RETURN_CODE 77)

set(compile ${CMAKE_CXX_COMPILER} ${PROJECT_SOURCE_DIR})
promise("every header compiles alone, twice"
  ${Python3_EXECUTABLE} ${here}/compile/headers.py ${compile}
    ${PROJECT_BINARY_DIR}/headers-compiled-alone)
promise("metres plus grams does not compile"
  ${Python3_EXECUTABLE} ${here}/compile/refused.py ${compile})

set(sanitizer "")
if(GRISTWRIGHT_SANITIZE)
  set(sanitizer -fsanitize=address,undefined)
endif()
set(delivery ${Python3_EXECUTABLE} ${here}/delivery/delivery.py)
promise("what is installed works, and others can build on the engine"
  ${delivery} installed ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR}
    ${PROJECT_BINARY_DIR}/delivery/installed "${sanitizer}")
promise("the Debian package works unpacked, and packs alike twice"
  ${delivery} package ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR}
    ${PROJECT_BINARY_DIR}/delivery/package)
promise("the same input gives the same bytes"
  ${Python3_EXECUTABLE} ${here}/delivery/reproducible.py $<TARGET_FILE:gristwright>
    $<TARGET_FILE:gristwright_pack> ${PROJECT_SOURCE_DIR})
promise("the figures in the documents are the engine's"
  ${Python3_EXECUTABLE} ${here}/constants.py ${PROJECT_SOURCE_DIR})
promise("every promise has its test"
  ${Python3_EXECUTABLE} ${here}/promises.py ${PROJECT_SOURCE_DIR} ${PROJECT_BINARY_DIR})
