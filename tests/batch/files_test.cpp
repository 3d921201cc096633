#include "engine/batch/files.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <string>

using namespace pouncemark;
using namespace pouncemark::batch;

TEST_CASE("a file is read whole, and one too long gives more bytes than asked for") {
  const Result<std::string> whole = read_file("demo-jobs/marsh-lights.json", 1'000'000);
  CHECK(whole->size() > 1'000);
  CHECK(whole->back() == '\n');
  CHECK(read_file("demo-jobs/marsh-lights.json", 100)->size() > 100);
}

TEST_CASE("what is not there or is a folder is not read, and is named") {
  const Result<std::string> missing = read_file("demo-jobs/no-such-job.json", 100);
  CHECK(missing.problem().code == ProblemCode::file_not_read);
  CHECK(missing.problem().where == "demo-jobs/no-such-job.json");
  CHECK(!read_file("demo-jobs", 100).is_ok());
  CHECK(!read_file("", 100).is_ok());
}

TEST_CASE("a file is written into a folder made for it, and read back as it was") {
  const std::string folder = "build/tests/written by a test/and deeper";
  const std::string bytes("zero \0 and \xff\n", 13);
  CHECK(write_file(folder, "one.bin", bytes).is_ok());
  CHECK(*read_file(folder + "/one.bin", 1'000) == bytes);
  CHECK(write_file(folder, "one.bin", "short").is_ok());
  CHECK(*read_file(folder + "/one.bin", 1'000) == "short");
  std::remove((folder + "/one.bin").c_str());
}

TEST_CASE("a file that cannot be written is named") {
  const Result<bool> written = write_file("demo-jobs/marsh-lights.json", "one.bin", "bytes");
  CHECK(written.problem().code == ProblemCode::file_not_written);
  CHECK(written.problem().where == "demo-jobs/marsh-lights.json/one.bin");
}
