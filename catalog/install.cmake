# What others build on: find_package(gristwright) gives gristwright::engine, what is true of yarn,
# and gristwright::catalogue, the tables, fabrics and templates with the readers of batches.
include(CMakePackageConfigHelpers)
set(package ${CMAKE_INSTALL_LIBDIR}/cmake/gristwright)
install(TARGETS gristwright_engine gristwright_catalogue_text gristwright_catalogue
  EXPORT gristwright)
foreach(library gristwright_engine gristwright_catalogue_text gristwright_catalogue)
  strip_installed(${CMAKE_INSTALL_LIBDIR}/lib${library}.a --strip-debug -D)
endforeach()
install(EXPORT gristwright NAMESPACE gristwright:: DESTINATION ${package}
  FILE gristwright-targets.cmake)
write_basic_package_version_file(gristwright-config-version.cmake COMPATIBILITY SameMinorVersion)
install(FILES gristwright-config.cmake
  ${CMAKE_CURRENT_BINARY_DIR}/gristwright-config-version.cmake DESTINATION ${package})
install(CODE "set(root \"${PROJECT_SOURCE_DIR}\")
  set(include_folder \"\${CMAKE_INSTALL_PREFIX}/${CMAKE_INSTALL_INCLUDEDIR}/gristwright\")")
install(SCRIPT installed_headers.cmake)
