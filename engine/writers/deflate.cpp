#include "engine/writers/deflate.h"

#include "engine/base/insist.h"

#include <zlib.h>

#include <algorithm>
#include <cstddef>
#include <limits>

namespace pouncemark::writers {
namespace {

constexpr std::size_t kPieceBytes = 16384;

}  // namespace

std::string deflated(std::string_view bytes, int level) {
  INSIST(level >= 0 && level <= 9);
  INSIST(bytes.size() <= std::numeric_limits<uInt>::max());
  std::string packed;
  z_stream stream{};
  const int opened = deflateInit(&stream, std::clamp(level, 0, 9));
  INSIST(opened == Z_OK);
  if (opened != Z_OK) return packed;
  // zlib reads its input through a pointer that is not const; it does not write there.
  stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(bytes.data()));
  stream.avail_in = static_cast<uInt>(bytes.size());
  int state = Z_OK;
  while (state == Z_OK) {
    const std::size_t before = packed.size();
    packed.resize(before + kPieceBytes);
    stream.next_out = reinterpret_cast<Bytef*>(packed.data() + before);
    stream.avail_out = static_cast<uInt>(kPieceBytes);
    state = deflate(&stream, Z_FINISH);
    packed.resize(before + kPieceBytes - stream.avail_out);
  }
  INSIST(state == Z_STREAM_END);
  deflateEnd(&stream);
  return packed;
}

}  // namespace pouncemark::writers
