# Says which include breaks the order of the floors: a folder sees only the folders named beside it,
# all of them on lower floors.
#   cmake -DROOT=repository -P tests/check_floors.cmake
cmake_minimum_required(VERSION 3.25)

set(faults "")
set(folders "")
set(looked_at 0)

# floor(NUMBER FOLDER SEEN...): one line of the table; SEEN are folders on lower floors.
macro(floor number folder)
  set(FLOOR_${folder} ${number})
  set(SEEN_${folder} ${ARGN})
  list(APPEND folders ${folder})
endmacro()

# also(FILE SEEN...): one file that sees more than its neighbours do.
macro(also file)
  set(ALSO_${file} ${ARGN})
endmacro()

set(ground engine/base engine/geometry)
floor(0 engine/base)
floor(1 engine/geometry engine/base)
floor(2 engine/material ${ground})
floor(2 engine/drawing ${ground})
floor(3 engine/piece ${ground} engine/material)
# Two branches meet late on purpose: a writer sees drawings and never a job, a piece never a page.
floor(3 engine/writers ${ground} engine/drawing)
set(made ${ground} engine/material engine/piece)
floor(4 engine/layout ${made})
floor(4 engine/frame ${made})
floor(4 engine/survey ${made})
set(laid_out ${made} engine/layout engine/frame engine/survey)
floor(4.5 engine/takeoff ${laid_out})
floor(5 engine/checks ${laid_out} engine/takeoff)
set(entered ${laid_out} engine/checks engine/takeoff)
floor(6 engine/job ${entered})
floor(7 engine/solve ${entered} engine/job)
floor(8 engine/plan ${entered} engine/job engine/solve)
floor(9 engine/sheets ${entered} engine/drawing engine/job engine/solve engine/plan)
floor(10 engine/output ${entered} engine/drawing engine/writers engine/job engine/solve engine/plan
      engine/sheets)
floor(11 engine/batch engine/base engine/writers engine/job engine/solve engine/output)
set(shown ${entered} engine/job engine/solve engine/plan)
floor(12 web/model ${shown} engine/output)
floor(13.1 web/host ${ground})
floor(13.2 web/widgets ${ground} engine/drawing web/model web/host)
floor(13.3 web/scene ${shown} engine/drawing web/model web/host web/widgets)
floor(14 web/panels ${shown} engine/drawing web/model web/widgets web/scene web/host)
floor(15 web ${shown} engine/drawing engine/output web/model web/scene web/widgets web/host
      web/panels)
# The worker is the engine without a bench: it is given a job and hands back files.
also(web/host/host_worker.cpp engine/job engine/solve engine/output engine/writers)
# Sizes of paper and page 0's bars are figures, not pages: the choice of paper reads them there.
also(web/model/paper_choice.h engine/sheets)
# Before each frame the shell has the faces built; the widgets know no more of it than host.h.
also(web/host/host_browser.cpp web/widgets)
also(web/host/bench_shell.cpp web/widgets)

# Nothing of ours may draw on these: they bring a megabyte into the page or do not compile for it.
set(nowhere "iostream|sstream|regex|format|ranges")
# The engine has no screen, no files, no clock, no chance and no threads.
set(not_in_engine "imgui[^>\"]*|GLFW/.*|GLES[23]/.*|GL/.*|emscripten[^>\"]*|fstream|filesystem|thread|mutex|chrono|ctime|time.h|random|unistd.h|sys/.*")

# The table itself: no arrow may point upwards or sideways.
foreach(folder ${folders})
  foreach(seen ${SEEN_${folder}})
    if(NOT DEFINED FLOOR_${seen} OR NOT FLOOR_${seen} LESS FLOOR_${folder})
      list(APPEND faults "table: ${folder} may not see ${seen}, which is not below it")
    endif()
  endforeach()
endforeach()

function(check_include file folder words)
  set(found "")
  if(words MATCHES "^[ \t]*#[ \t]*include[ \t]*\"([^\"]*)\"")
    set(path ${CMAKE_MATCH_1})
    if(NOT path MATCHES "^(engine|web)/")
      set(found "includes \"${path}\": write the path from the repository's root")
    else()
      cmake_path(GET path PARENT_PATH to)
      if(NOT EXISTS "${ROOT}/${path}")
        set(found "includes \"${path}\", which is not there")
      elseif(NOT to STREQUAL folder AND NOT "${to}" IN_LIST SEEN_${folder}
             AND NOT "${to}" IN_LIST ALSO_${file})
        set(found "includes \"${path}\": ${folder} does not see ${to}")
      endif()
    endif()
  elseif(words MATCHES "^[ \t]*#[ \t]*include[ \t]*<([^>]*)>")
    set(header ${CMAKE_MATCH_1})
    if(header MATCHES "^(${nowhere})$")
      set(found "includes <${header}>, which is used nowhere here")
    elseif(folder MATCHES "^engine/" AND NOT folder STREQUAL "engine/batch"
           AND header MATCHES "^(${not_in_engine})$")
      set(found "includes <${header}>: the engine knows no screen, file, clock or chance")
    elseif(header MATCHES "^(engine|web)/")
      set(found "includes <${header}>: our own headers stand in quotes")
    endif()
  endif()
  if(found)
    set(faults ${faults} "${file} ${found}" PARENT_SCOPE)
  endif()
endfunction()

file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/engine/*.h ${ROOT}/engine/*.cpp ${ROOT}/web/*.h
     ${ROOT}/web/*.cpp)
foreach(file ${files})
  cmake_path(GET file PARENT_PATH folder)
  if(NOT "${folder}" IN_LIST folders)
    list(APPEND faults "${file} stands in ${folder}, which has no floor: give it a line in the table")
    continue()
  endif()
  math(EXPR looked_at "${looked_at} + 1")
  file(STRINGS ${ROOT}/${file} includes REGEX "^[ \t]*#[ \t]*include")
  foreach(words ${includes})
    check_include(${file} ${folder} "${words}")
  endforeach()
endforeach()

if(looked_at EQUAL 0)
  list(APPEND faults "no source file was found under ${ROOT}")
endif()
if(faults)
  list(JOIN faults "\n  " text)
  message(FATAL_ERROR "The floors are broken:\n  ${text}")
endif()
message(STATUS "floors: ${looked_at} files, every include points downwards")
