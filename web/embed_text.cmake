# Writes text files into one C++ source, so that the program holds them and need not fetch them.
#   cmake -DFOLDER=shaders -DOUTPUT=shader_texts.cpp -P embed_text.cmake
cmake_minimum_required(VERSION 3.25)

set(words "#include \"web/scene/shader_texts.h\"\n\nnamespace pouncemark::web {\n\n")
string(APPEND words "ShaderTexts shader_texts() {\n  ShaderTexts texts;\n")
foreach(name mark line)
  foreach(part vert frag)
    file(READ ${FOLDER}/${name}.${part} text)
    string(APPEND words "  texts.${name}_${part} = R\"shader(${text})shader\";\n")
  endforeach()
endforeach()
string(APPEND words "  return texts;\n}\n\n}  // namespace pouncemark::web\n")
file(WRITE ${OUTPUT} "${words}")
