# What find_package(gristwright) reads.
include(CMakeFindDependencyMacro)
find_dependency(fmt)
include(${CMAKE_CURRENT_LIST_DIR}/gristwright-targets.cmake)
