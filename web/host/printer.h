#pragma once

#include <cstdint>
#include <string>
#include <string_view>

/// Printing off the main thread, and the browser's own viewer for what was printed. A part of the
/// seam: see host.h.
namespace pouncemark::web::host {

/// A file that was printed.
struct PrintedFile {
  std::string name;
  std::string sha256;  ///< over its bytes, 64 hex digits
  std::int64_t bytes = 0;
};

/// What the worker says while it prints.
class PrintGuest {
 public:
  virtual ~PrintGuest() = default;
  virtual void print_went_on(std::int64_t printed, std::int64_t pages) = 0;
  /// One more file is whole.
  virtual void print_made(PrintedFile file) = 0;
  /// Every file is made; those to be saved are on their way to the downloads.
  virtual void print_ended() = 0;
  /// Nothing was saved. The sentence says why.
  virtual void print_failed(std::string_view sentence) = 0;
};

void set_print_guest(PrintGuest* guest);

/// Fetches what printing needs, if it is not here yet. Nothing is said when it does not come: that
/// is said when something is to be printed.
void prepare_printing();

/// Prints a job as saved (an order as print_order_text writes it) in the worker. The files are
/// saved as downloads when all are made, or held to be looked at.
enum class Then : std::uint8_t { save, look };
void start_printing(std::string_view job, std::string_view order, Then then);

/// Ends the worker at once; nothing is saved and nothing more is said.
void stop_printing();

/// True where the browser can show a PDF inside the page.
bool can_show_printed();

/// Lays the viewer with the file that is held over an area, device pixels, opened at a page from 1.
/// To be called again when the area has changed; the same call again does nothing.
void show_printed(float left, float top, float right, float bottom, int page);
/// Takes the viewer away and lets go of the file.
void put_printed_away();
/// Saves the very file that is shown; asks the viewer to print it.
void save_printed();
void print_shown();

}  // namespace pouncemark::web::host
