#pragma once

#include <utility>
#include <variant>

#include "engine/base/insist.h"
#include "engine/base/problem.h"

namespace pouncemark {

/// Either a value or the Problem that stood in its way. Never both, never neither.
template <typename T>
class [[nodiscard]] Result {
 public:
  Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}            // NOLINT
  Result(Problem problem) : held_(std::in_place_index<1>, std::move(problem)) {}  // NOLINT

  /// True when a value is held.
  bool is_ok() const { return held_.index() == 0; }
  explicit operator bool() const { return is_ok(); }

  /// The value; our own mistake (INSIST) when a problem is held.
  const T& value() const {
    INSIST(is_ok());
    return *std::get_if<0>(&held_);
  }
  T& value() {
    INSIST(is_ok());
    return *std::get_if<0>(&held_);
  }
  const T& operator*() const { return value(); }
  const T* operator->() const { return &value(); }

  /// The problem; our own mistake (INSIST) when a value is held.
  const Problem& problem() const {
    INSIST(!is_ok());
    return *std::get_if<1>(&held_);
  }

 private:
  std::variant<T, Problem> held_;
};

}  // namespace pouncemark
