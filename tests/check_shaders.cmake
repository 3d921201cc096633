# Compiles and links every pair of shaders as the browser would.
#   cmake -DFOLDER=shaders -DVALIDATOR=glslangValidator -P tests/check_shaders.cmake
cmake_minimum_required(VERSION 3.25)

file(GLOB vertex_shaders ${FOLDER}/*.vert)
file(GLOB fragment_shaders ${FOLDER}/*.frag)
list(LENGTH vertex_shaders pairs)
list(LENGTH fragment_shaders fragments)
if(pairs EQUAL 0 OR NOT pairs EQUAL fragments)
  message(FATAL_ERROR "${FOLDER} holds ${pairs} .vert and ${fragments} .frag files, not pairs")
endif()

foreach(vertex_shader ${vertex_shaders})
  string(REGEX REPLACE "vert$" "frag" fragment_shader ${vertex_shader})
  execute_process(
    COMMAND ${VALIDATOR} -l ${vertex_shader} ${fragment_shader}
    RESULT_VARIABLE status OUTPUT_VARIABLE words ERROR_VARIABLE words)
  if(NOT status EQUAL 0)
    message(FATAL_ERROR "${vertex_shader} and its .frag do not compile and link:\n${words}")
  endif()
  foreach(shader ${vertex_shader} ${fragment_shader})
    file(READ ${shader} start LIMIT 20)
    if(NOT start MATCHES "^#version 300 es\n//")
      message(FATAL_ERROR "${shader}: line 1 is not '#version 300 es' with a comment below it")
    endif()
  endforeach()
endforeach()
message(STATUS "shaders: ${pairs} pairs compile and link")
