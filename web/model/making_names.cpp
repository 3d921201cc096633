#include <algorithm>
#include <cstddef>
#include <map>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/making_codes.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr int kMostNameSigns = 120;
constexpr int kMostCodeSigns = 24;

std::string trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return std::string(text);
}

int signs_of(std::string_view text) {
  return static_cast<int>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0u) != 0x80u;
  }));
}

/// Signs that are not written but do something: the first 32, 127, and 128 to 159 in UTF-8.
bool has_control_sign(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if (byte < 0x20 || byte == 0x7f) return true;
    const bool is_two = byte == 0xC2 && i + 1 < text.size();
    if (is_two && static_cast<unsigned char>(text[i + 1]) < 0xA0) return true;
  }
  return false;
}

/// Why a text cannot be a name or a code; empty where it can.
std::string text_refused(const std::string& what, const std::string& text, int most) {
  if (text.empty()) {
    return "The " + what + " is empty: write 1 to " + count_text(most) + " signs.";
  }
  if (has_control_sign(text)) {
    return "The " + what + " holds a control sign: write it with letters, figures and marks only.";
  }
  const int signs = signs_of(text);
  if (signs <= most) return {};
  return "The " + what + " is " + count_text(signs) + " signs long: write at most " +
         count_text(most) + ".";
}

/// "P12" is "P" and 12; without a number at its end, or with one that begins with 0: nothing.
std::pair<std::string, int> letters_and_number(const std::string& code) {
  std::size_t digits = code.size();
  while (digits > 0 && code[digits - 1] >= '0' && code[digits - 1] <= '9') --digits;
  const std::string number = code.substr(digits);
  if (number.empty() || number.size() > 6 || number.front() == '0') return {code, 0};
  return {code.substr(0, digits), std::stoi(number)};
}

template <typename Entry>
std::string in_order(const std::vector<Entry>& entries, const std::string& letters) {
  if (entries.empty()) return {};
  const auto count = static_cast<std::int64_t>(entries.size());
  const std::string first = letters + "1";
  return count == 1 ? first : first + " to " + letters + std::to_string(count);
}

void follow_in_bays(job::Job& job, const std::map<std::string, std::string>& codes) {
  for (job::Bay& bay : job.bays) {
    const auto found = codes.find(bay.holds);
    if (!bay.stands_empty && found != codes.end()) bay.holds = found->second;
  }
}

bool has_sleeve(const job::Section& section, const std::string& code) {
  if (code.compare(0, section.code.size() + 1, section.code + "-") != 0) return false;
  for (int i = 0; i < section.count; ++i) {
    if (job::sleeve_code(section, i) == code) return true;
  }
  return false;
}

}  // namespace

const std::string& code_of(const job::Job& job, int piece) {
  const auto index = static_cast<std::size_t>(piece);
  return is_section(job, piece) ? job.sections[index].code
                                : job.panels[index - job.sections.size()].code;
}

void give_code(job::Section& section, const std::string& code) {
  job::Section called = section;
  called.code = code;
  called.changes.clear();
  for (int i = 0; i < section.count; ++i) {
    const std::string was = job::sleeve_code(section, i);
    const std::string is = job::sleeve_code(called, i);
    const auto found = section.changes.find(was);
    if (found != section.changes.end()) called.changes[is] = found->second;
    std::replace(called.missing.begin(), called.missing.end(), was, is);
  }
  section = std::move(called);
}

std::string called_so(const job::Job& job, int piece, const std::string& code) {
  for (int other = 0; other < piece_count(job); ++other) {
    if (other != piece && code_of(job, other) == code) return piece_words(job, other);
  }
  for (const job::Section& section : job.sections) {
    if (has_sleeve(section, code)) return "a sleeve of section " + section.code;
  }
  if (piece < 0 || !is_section(job, piece)) return {};
  job::Section called = job.sections[static_cast<std::size_t>(piece)];
  called.code = code;
  for (int other = 0; other < piece_count(job); ++other) {
    if (has_sleeve(called, code_of(job, other))) return piece_words(job, other);
  }
  return {};
}

std::string next_code(const job::Job& job, const std::string& like, bool of_section) {
  const std::string letters =
      like.empty() ? (of_section ? "" : "P") : letters_and_number(like).first;
  int number = like.empty() ? 0 : std::max(1, letters_and_number(like).second);
  for (int piece = 0; piece < piece_count(job); ++piece) {
    const auto [others, found] = letters_and_number(code_of(job, piece));
    if (others == letters) number = std::max(number, found);
  }
  std::string code;
  do {
    code = letters + std::to_string(++number);
  } while (!called_so(job, -1, code).empty());
  return code;
}

Made with_name(const job::Job& job, std::string_view name) {
  const std::string kept = trimmed(name);
  const std::string sentence = text_refused("name of the job", kept, kMostNameSigns);
  if (!sentence.empty()) return refused(job, 0, sentence);
  Made made = refused(job, 0, {});
  made.action = "Named the job " + shortened(kept, 40) + ", was " + shortened(job.name, 40);
  made.job.name = kept;
  return made;
}

Made with_code(const job::Job& job, int piece, std::string_view code) {
  const std::string kept = trimmed(code);
  std::string sentence = text_refused("code", kept, kMostCodeSigns);
  const std::string other = sentence.empty() ? called_so(job, piece, kept) : std::string();
  if (!other.empty()) {
    sentence = "The code " + kept + " is used already, by " + other + ": choose another.";
  }
  if (!sentence.empty()) return refused(job, piece, sentence);
  Made made = refused(job, piece, {});
  made.action = with_capital(piece_words(job, piece)) + " is now called " + kept;
  follow_in_bays(made.job, {{code_of(job, piece), kept}});
  if (is_section(job, piece)) {
    give_code(made.job.sections[static_cast<std::size_t>(piece)], kept);
  } else {
    made.job.panels[static_cast<std::size_t>(piece) - job.sections.size()].code = kept;
  }
  return made;
}

Made with_new_numbers(const job::Job& job, int piece) {
  Made made = refused(job, piece, {});
  std::map<std::string, std::string> codes;
  bool is_other = false;
  const auto number = [&](const std::string& was, const std::string& is) {
    codes[was] = is;
    is_other = is_other || was != is;
    return is;
  };
  for (std::size_t i = 0; i < job.sections.size(); ++i) {
    const std::string is = number(job.sections[i].code, std::to_string(i + 1));
    give_code(made.job.sections[i], is);
  }
  for (std::size_t i = 0; i < job.panels.size(); ++i) {
    made.job.panels[i].code = number(job.panels[i].code, "P" + std::to_string(i + 1));
  }
  if (!is_other) {
    return refused(job, piece, "The pieces are numbered in their order already: nothing to do.");
  }
  follow_in_bays(made.job, codes);
  const std::string sections = in_order(job.sections, "");
  const std::string panels = in_order(job.panels, "P");
  made.action = "Numbered the pieces anew: " + sections +
                (sections.empty() || panels.empty() ? "" : ", ") + panels;
  return made;
}

}  // namespace pouncemark::web
