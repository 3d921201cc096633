# Plants one fault at a time into a small house and asks whether check_floors.cmake finds it.
#   cmake -DCHECK=tests/check_floors.cmake -DSCRATCH=folder -P tests/check_floors_test.cmake
cmake_minimum_required(VERSION 3.25)

include(${CMAKE_CURRENT_LIST_DIR}/plant_faults.cmake)

file(REMOVE_RECURSE ${SCRATCH})
look("no source file was found")
file(WRITE ${SCRATCH}/engine/base/problem.h "#pragma once\n#include <string>\n")
file(WRITE ${SCRATCH}/engine/job/job.h "#include \"engine/base/problem.h\"\n")
file(WRITE ${SCRATCH}/engine/drawing/drawing.h "#include <vector>\n")
file(WRITE ${SCRATCH}/web/model/workspace.h "#include \"engine/job/job.h\"\n")
look("sound")

plant(engine/base/a.h "#include \"engine/job/job.h\"" "engine/base does not see engine/job")
plant(engine/piece/a.h "#include \"engine/drawing/drawing.h\""
      "engine/piece does not see engine/drawing")
plant(engine/writers/a.cpp "  #  include \"engine/job/job.h\""
      "engine/writers does not see engine/job")
plant(engine/job/a.cpp "#include \"web/model/workspace.h\"" "engine/job does not see web/model")
plant(engine/layout/a.cpp "#include <fstream>" "includes <fstream>")
plant(engine/layout/a.cpp "#include <chrono>" "includes <chrono>")
plant(engine/solve/a.cpp "#include <GLFW/glfw3.h>" "includes <GLFW/glfw3.h>")
plant(engine/batch/a.cpp "#include <fstream>" "sound")
plant(engine/batch/a.cpp "#include <iostream>" "includes <iostream>")
plant(web/model/a.cpp "#include <sstream>" "includes <sstream>")
plant(engine/attic/a.h "#pragma once" "engine/attic, which has no floor")
plant(engine/job/a.cpp "#include \"job.h\"" "write the path from the repository's root")
plant(engine/job/a.cpp "#include \"../base/problem.h\"" "write the path from the repository's root")
plant(engine/job/a.cpp "#include <engine/base/problem.h>" "our own headers stand in quotes")
plant(engine/job/a.cpp "#include \"engine/base/gone.h\"" "which is not there")
plant(web/host/host_worker.cpp "#include \"engine/job/job.h\"" "sound")
plant(web/host/host_browser.cpp "#include \"engine/job/job.h\"" "web/host does not see engine/job")
look("sound")

if(NOT ran EQUAL 20)
  message(FATAL_ERROR "${ran} looks were taken, 20 were meant")
endif()
file(REMOVE_RECURSE ${SCRATCH})
