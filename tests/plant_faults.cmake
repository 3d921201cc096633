# For the tests of our checks: plants one fault at a time into SCRATCH and asks whether CHECK finds it.

set(ran 0)

# look(EXPECTED): runs the check; EXPECTED is a part of its sentence, or `sound` for no fault.
function(look expected)
  execute_process(
    COMMAND ${CMAKE_COMMAND} -DROOT=${SCRATCH} -P ${CHECK}
    RESULT_VARIABLE status ERROR_VARIABLE words OUTPUT_VARIABLE ignored)
  string(REGEX REPLACE "[ \n]+" " " words "${words}")
  string(FIND "${words}" "${expected}" place)
  if(expected STREQUAL "sound")
    if(NOT status EQUAL 0)
      message(FATAL_ERROR "Sound files were found faulty:\n${words}")
    endif()
  elseif(status EQUAL 0 OR place EQUAL -1)
    message(FATAL_ERROR "Not found: '${expected}'. The check said:\n${words}")
  endif()
  math(EXPR ran "${ran} + 1")
  set(ran ${ran} PARENT_SCOPE)
endfunction()

# plant(FILE WORDS EXPECTED): one more file beside the sound ones, a look, and the file is gone.
function(plant file words expected)
  file(WRITE ${SCRATCH}/${file} "${words}\n")
  look("${expected}")
  file(REMOVE ${SCRATCH}/${file})
  set(ran ${ran} PARENT_SCOPE)
endfunction()
