#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>

#include "engine/drawing/drawing.h"

/// Floor 3, writers: drawing or rows of text to bytes. Sees drawings only, never a job, never a
/// file.
namespace pouncemark::writers {

/// The three cut faces as TrueType bytes (glyf outlines). The views must outlive the writer.
/// `main_*` is tried first; a run it cannot set whole is set whole in `wide`, which has one weight.
struct Faces {
  std::string_view main_regular;
  std::string_view main_bold;
  std::string_view wide;
};

/// What a check bar should be and what the steel rule said, micrometres, each way by itself.
/// Equal figures mean no correction.
struct Correction {
  std::int64_t across_nominal_um = 1;
  std::int64_t across_measured_um = 1;
  std::int64_t along_nominal_um = 1;
  std::int64_t along_measured_um = 1;
};

struct PdfOptions {
  std::string title;
  std::string subject;
  std::string
      id_hex;  ///< 32 hex digits for the file's /ID, made from the job: no clock, no chance.
  Correction correction;
  int compression = 6;  ///< zlib level 0 to 9.
};

/// Receives the file piece by piece, in order.
using Sink = std::function<void(std::string_view)>;

/// Writes one PDF 1.7 (ISO 32000-1), page after page, holding one page in memory at a time.
/// Same calls, same bytes: no date, no locale, no chance.
class PdfWriter {
 public:
  /// INSIST: `options.id_hex` is 32 hex digits.
  PdfWriter(Sink sink, const Faces& faces, PdfOptions options);
  ~PdfWriter();
  PdfWriter(const PdfWriter&) = delete;
  PdfWriter& operator=(const PdfWriter&) = delete;

  /// One page of the given true paper size. The picture is in true paper micrometres from the lower
  /// left corner of the sheet; the correction is applied here as one matrix about that corner.
  /// INSIST: at most 5080 mm either way, nothing further than 10^10 um, every path begins with a
  /// move, every clip is ended.
  void add_page(const drawing::Drawing& picture, std::int64_t width_um, std::int64_t height_um);

  /// Writes faces, catalogue and table of places. Nothing may be added afterwards.
  /// INSIST: at least one page.
  void finish();

  /// Signs that no face has, with how often each was met (drawn as an empty box).
  const std::map<char32_t, int>& missing_signs() const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

/// Width of `words` as the writer would set them at `size_um`, micrometres.
std::int64_t text_width_um(const Faces& faces, std::string_view words, drawing::Weight weight,
                           std::int64_t size_um);

}  // namespace pouncemark::writers
