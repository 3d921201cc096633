# Writes a source file that holds the three faces as bytes.
#   cmake -DFACES=folder -DOUTPUT=file.cpp -P built_in_faces.cmake
cmake_minimum_required(VERSION 3.25)

set(arrays "")
set(fields "")
foreach(face main-regular main-bold wide)
  string(REPLACE "-" "_" field ${face})
  file(READ ${FACES}/${face}.ttf hex HEX)
  string(LENGTH "${hex}" digits)
  math(EXPR bytes "${digits} / 2")
  if(bytes EQUAL 0)
    message(FATAL_ERROR "${FACES}/${face}.ttf is empty: run web/deps/fetch again.")
  endif()
  string(REGEX REPLACE "(..)" "0x\\1," list "${hex}")
  string(APPEND arrays "const unsigned char ${field}[${bytes}] = {${list}};\n")
  string(APPEND fields "          .${field} = view(${field}, ${bytes}),\n")
endforeach()

file(WRITE ${OUTPUT} "#include \"engine/batch/built_in_faces.h\"

#include <cstddef>

namespace pouncemark::batch {
namespace {

${arrays}
std::string_view view(const unsigned char* bytes, std::size_t count) {
  return {reinterpret_cast<const char*>(bytes), count};
}

}  // namespace

writers::Faces built_in_faces() {
  return {
${fields}  };
}

}  // namespace pouncemark::batch
")
