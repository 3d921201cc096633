#include "tests/bench/cairo_pages.h"

#include <cairo-ft.h>
#include <cairo-pdf.h>

#include <array>
#include <memory>
#include <string_view>
#include <variant>

namespace pouncemark::tests {
namespace {

constexpr double kPointsInUm = 72.0 / 25'400.0;
constexpr double kQuarterTurn = 1.570796326794896619;

double real(std::int64_t um) { return static_cast<double>(um); }

/// A face in FreeType's hands. Cairo keeps faces for later use, so it is Cairo that lets go of it.
struct LoadedFace {
  FT_Library library = nullptr;
  FT_Face face = nullptr;
};

constexpr cairo_user_data_key_t kLoadedFaceKey{};

void let_go(void* data) {
  const std::unique_ptr<LoadedFace> loaded(static_cast<LoadedFace*>(data));
  FT_Done_FreeType(loaded->library);
}

cairo_font_face_t* load_face(std::string_view bytes) {
  auto loaded = std::make_unique<LoadedFace>();
  FT_Init_FreeType(&loaded->library);
  FT_New_Memory_Face(loaded->library, reinterpret_cast<const FT_Byte*>(bytes.data()),
                     static_cast<FT_Long>(bytes.size()), 0, &loaded->face);
  cairo_font_face_t* face = cairo_ft_font_face_create_for_ft_face(loaded->face, 0);
  cairo_font_face_set_user_data(face, &kLoadedFaceKey, loaded.release(), let_go);
  return face;
}

/// A run of text as Cairo sets it from (0, 0).
struct Glyphs {
  cairo_glyph_t* glyphs = nullptr;
  int count = 0;
  cairo_text_cluster_t* clusters = nullptr;
  int cluster_count = 0;
  cairo_text_cluster_flags_t flags{};

  Glyphs(cairo_t* cairo, const std::string& words) {
    cairo_scaled_font_text_to_glyphs(cairo_get_scaled_font(cairo), 0, 0, words.data(),
                                     static_cast<int>(words.size()), &glyphs, &count, &clusters,
                                     &cluster_count, &flags);
  }
  ~Glyphs() {
    cairo_glyph_free(glyphs);
    cairo_text_cluster_free(clusters);
  }
  Glyphs(const Glyphs&) = delete;
  Glyphs& operator=(const Glyphs&) = delete;

  bool has_every_sign() const {
    for (int i = 0; i < count; ++i) {
      if (glyphs[i].index == 0) return false;
    }
    return true;
  }
};

/// Hands the items of drawings to Cairo, one after the other.
class Hand {
 public:
  Hand(cairo_t* cairo, const writers::Faces& faces)
      : cairo_(cairo),
        faces_{load_face(faces.main_regular), load_face(faces.main_bold), load_face(faces.wide)} {}
  ~Hand() {
    for (cairo_font_face_t* face : faces_) cairo_font_face_destroy(face);
  }
  Hand(const Hand&) = delete;
  Hand& operator=(const Hand&) = delete;

  void operator()(const drawing::Stroke& stroke) const {
    std::vector<double> dash;
    for (const std::int64_t length : stroke.pen.dash_um) dash.push_back(real(length));
    cairo_set_dash(cairo_, dash.data(), static_cast<int>(dash.size()), 0);
    cairo_set_line_width(cairo_, real(stroke.pen.width_um));
    set_grey(stroke.pen.grey_permille);
    add_path(stroke.steps);
    cairo_stroke(cairo_);
  }

  void operator()(const drawing::Fill& fill) const {
    set_grey(fill.grey_permille);
    add_path(fill.steps);
    cairo_fill(cairo_);
  }

  void operator()(const drawing::Text& text) const {
    cairo_save(cairo_);
    set_grey(text.grey_permille);
    cairo_translate(cairo_, real(text.at.x), real(text.at.y));
    cairo_rotate(cairo_, text.quarter_turns * kQuarterTurn);
    cairo_matrix_t size;
    cairo_matrix_init_scale(&size, real(text.size_um), -real(text.size_um));
    cairo_set_font_matrix(cairo_, &size);
    const std::size_t weight = text.weight == drawing::Weight::bold ? 1 : 0;
    if (!set_run(text, weight, false)) set_run(text, 2, true);
    cairo_restore(cairo_);
  }

  void operator()(const drawing::ClipStart& clip) const {
    cairo_save(cairo_);
    cairo_rectangle(cairo_, real(clip.box.low.x), real(clip.box.low.y),
                    real(clip.box.high.x - clip.box.low.x), real(clip.box.high.y - clip.box.low.y));
    cairo_clip(cairo_);
  }

  void operator()(const drawing::ClipEnd&) const { cairo_restore(cairo_); }

 private:
  void set_grey(int permille) const {
    const double grey = permille / 1000.0;
    cairo_set_source_rgb(cairo_, grey, grey, grey);
  }

  void add_path(const std::vector<drawing::PathStep>& steps) const {
    for (const drawing::PathStep& step : steps) {
      switch (step.step) {
        case drawing::Step::move:
          cairo_move_to(cairo_, real(step.to.x), real(step.to.y));
          break;
        case drawing::Step::line:
          cairo_line_to(cairo_, real(step.to.x), real(step.to.y));
          break;
        case drawing::Step::curve:
          cairo_curve_to(cairo_, real(step.a.x), real(step.a.y), real(step.b.x), real(step.b.y),
                         real(step.to.x), real(step.to.y));
          break;
        case drawing::Step::close:
          cairo_close_path(cairo_);
          break;
      }
    }
  }

  /// Sets the run in one face; false, and nothing set, when the face lacks a sign of it.
  bool set_run(const drawing::Text& text, std::size_t slot, bool is_last) const {
    cairo_set_font_face(cairo_, faces_[slot]);
    const Glyphs run(cairo_, text.words);
    if (!is_last && !run.has_every_sign()) return false;
    if (text.align != drawing::Align::left) {
      cairo_text_extents_t extents;
      cairo_glyph_extents(cairo_, run.glyphs, run.count, &extents);
      const double part = text.align == drawing::Align::centre ? 0.5 : 1.0;
      cairo_translate(cairo_, -part * extents.x_advance, 0);
    }
    cairo_show_text_glyphs(cairo_, text.words.data(), static_cast<int>(text.words.size()),
                           run.glyphs, run.count, run.clusters, run.cluster_count, run.flags);
    return true;
  }

  cairo_t* cairo_;
  std::array<cairo_font_face_t*, 3> faces_;
};

cairo_status_t append(void* file, const unsigned char* bytes, unsigned length) {
  static_cast<std::string*>(file)->append(reinterpret_cast<const char*>(bytes), length);
  return CAIRO_STATUS_SUCCESS;
}

/// True micrometres, y up, and letters as wide as they are drawn in the face.
cairo_t* take_up(cairo_surface_t* surface, const sheets::Paper& paper) {
  cairo_t* cairo = cairo_create(surface);
  cairo_translate(cairo, 0, real(paper.length_um) * kPointsInUm);
  cairo_scale(cairo, kPointsInUm, -kPointsInUm);
  cairo_font_options_t* options = cairo_font_options_create();
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  cairo_set_font_options(cairo, options);
  cairo_font_options_destroy(options);
  return cairo;
}

}  // namespace

std::string cairo_pages(const std::vector<drawing::Drawing>& pictures, std::size_t count,
                        const sheets::Paper& paper, const writers::Faces& faces) {
  std::string file;
  cairo_surface_t* surface = cairo_pdf_surface_create_for_stream(
      append, &file, real(paper.width_um) * kPointsInUm, real(paper.length_um) * kPointsInUm);
  cairo_t* cairo = take_up(surface, paper);
  {
    const Hand hand(cairo, faces);
    for (std::size_t page = 0; page < count; ++page) {
      for (const drawing::Item& item : pictures[page % pictures.size()].items) {
        std::visit(hand, item);
      }
      cairo_show_page(cairo);
    }
  }
  const bool is_fine = cairo_status(cairo) == CAIRO_STATUS_SUCCESS;
  cairo_destroy(cairo);
  cairo_surface_finish(surface);
  const bool is_finished = cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS;
  cairo_surface_destroy(surface);
  return is_fine && is_finished ? file : std::string();
}

}  // namespace pouncemark::tests
