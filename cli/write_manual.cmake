# cmake -D PROGRAM=gristwright -D TO=folder -P write_manual.cmake
function(write file)
  execute_process(COMMAND ${PROGRAM} help ${ARGN} OUTPUT_FILE ${file} COMMAND_ERROR_IS_FATAL ANY)
endfunction()

file(REMOVE_RECURSE ${TO})
file(MAKE_DIRECTORY ${TO}/man1)
write(${TO}/gristwright --print completion)
execute_process(COMMAND ${PROGRAM} help --print commands OUTPUT_VARIABLE commands
  COMMAND_ERROR_IS_FATAL ANY)
string(REGEX MATCHALL "[a-z-]+" commands "${commands}")
foreach(command ${commands})
  write(${TO}/man1/gristwright-${command}.1 ${command} --print manual)
endforeach()
write(${TO}/man1/gristwright.1 --print manual)  # the last: the build looks for it
