#include "engine/sheets/full_face.h"

#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {

drawing::Drawing full_face_page(const GuideSet& set, const PageWindow& page) {
  const PageView view{set, page};
  drawing::Drawing picture;
  picture.items.emplace_back(drawing::ClipStart{view.window()});
  add_page_frame(view, &picture);
  add_piece_edges(view, &picture);
  add_rows(view, &picture);
  add_figures(view, &picture);
  const std::size_t before_title = picture.items.size();
  add_page_title(view, &picture);
  drawing::TakenRoom furniture;
  furniture.take(picture, before_title);
  add_datum(view, &picture);
  add_row_words(view, furniture, &picture);
  picture.items.emplace_back(drawing::ClipEnd{});
  return picture;
}

}  // namespace pouncemark::sheets
