// One JSON object read or written key by key. A type lists its fields once, in json_*.cpp, as a
// function over `Io`; an ObjectReader and an ObjectWriter both walk that list, so what is written
// is what is read.
//
//   must: a key that has to be there.
//   may:  a key that may be missing; the value then stays what it was. Writing leaves out what says
//   nothing: empty texts and
//         lists, absent options, a flag that is false, a count of 0. Other numbers, names and
//         colours are always written, so that a later change of a default never changes a wall that
//         is already on file.
//   usually: a key that joined the format later: writing leaves out the usual value, so that a file
//         from before is written as it was. What is usual stays so for good.
//   pair: two keys that make one value, both or neither.
#pragma once

#include "store/json_text.h"
#include "units/length.h"
#include "units/mass.h"
#include "wall/colour.h"
#include "wall/ids.h"
#include "wall/names.h"
#include "wall/room.h"
#include "wall/unknown.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace wallwright::store {

/// The first problem met while reading, if any: a person mends one at a time.
using FirstProblem = std::optional<Problem>;

/// The number as the file keeps it, so that 419.99999999 mm is 420: to a hundredth of a mm for a
/// key in mm, to a thousandth for any other. Rounded on reading too: what was read is what will be
/// written.
double as_kept(std::string_view key, double value);

/// The name that `value` gives itself, or its number in the list, from 1: what stands in the path
/// of a problem.
std::string name_in_list(const Json& value, std::size_t index);

class ObjectReader {
  public:
    /// `path` leads to `value` from the top of the file ("pieces/kelp"); "" is the top itself.
    ObjectReader(const Json& value, std::string path, FirstProblem& problem);

    template <class T>
    void must(std::string_view key, T& into) {
        if (const Json* found = look_up(key))
            read(key, *found, into);
        else
            missing(key);
    }
    template <class T>
    void may(std::string_view key, T& into) {
        if (const Json* found = look_up(key))
            read(key, *found, into);
    }
    template <class T>
    void may(std::string_view key, std::optional<T>& into) {
        if (const Json* found = look_up(key))
            read(key, *found, into.emplace());
    }
    template <class T>
    void usually(std::string_view key, T& into, const std::type_identity_t<T>& /*usual*/) {
        may(key, into);
    }
    template <class Whole, class Part>
    void pair(std::string_view first_key, Part Whole::*first, std::string_view second_key,
              Part Whole::*second, std::optional<Whole>& into) {
        std::optional<Part> one;
        std::optional<Part> other;
        may(first_key, one);
        may(second_key, other);
        if (one.has_value() != other.has_value())
            half_pair(one ? first_key : second_key, one ? second_key : first_key);
        if (!one || !other)
            return;
        into.emplace();
        (*into).*first = *one;
        (*into).*second = *other;
    }
    /// width_mm and height_mm.
    void size(geometry::Size& into);
    /// left_mm, bottom_mm (on the floor unless it says otherwise), width_mm, height_mm.
    void rect(geometry::Rect<geometry::Wall>& into);
    /// x_mm and y_mm, both or neither.
    void point(std::optional<geometry::Point<geometry::Wall>>& into);
    template <class T>
    void object(std::string_view key, T& into) {
        if (const Json* found = look_up(key))
            read_object(*found, path_to(key), into);
    }
    template <class T>
    void object(std::string_view key, std::optional<T>& into) {
        if (const Json* found = look_up(key))
            read_object(*found, path_to(key), into.emplace());
    }
    template <class T>
    void must_object(std::string_view key, T& into) {
        if (look_up(key) == nullptr)
            missing(key);
        object(key, into);
    }
    template <class T>
    void list(std::string_view key, std::vector<T>& into) {
        const Json* found = look_up(key);
        if (found == nullptr || !expect(key, *found, found->is_array(), kListWanted))
            return;
        for (const Json& item : *found) {
            const std::string path = path_to(key) + "/" + name_in_list(item, into.size());
            read_object(item, path, into.emplace_back());
        }
    }
    /// Whether the key is there; it is not read by asking.
    [[nodiscard]] bool has(std::string_view key) const;
    /// What is wrong with the object as a whole.
    void refuse(std::string what, std::string remedy);
    /// Every key that was not asked for. To be called last.
    void unknown(wall::UnknownKeys& into) const;

  private:
    const Json* look_up(std::string_view key);
    [[nodiscard]] std::string path_to(std::string_view key) const;
    void missing(std::string_view key);
    void half_pair(std::string_view there, std::string_view missing_key);
    void complain(Problem problem);
    bool expect(std::string_view key, const Json& found, bool as_it_should_be,
                const std::string& what);
    template <class T>
    void read_object(const Json& value, const std::string& path, T& into) {
        ObjectReader inner(value, path, problem_);
        fields(inner, into);
    }

    void read(std::string_view key, const Json& found, double& into);
    void read(std::string_view key, const Json& found, int& into);
    void read(std::string_view key, const Json& found, bool& into);
    void read(std::string_view key, const Json& found, std::string& into);
    void read(std::string_view key, const Json& found, wall::Colour& into);
    void read(std::string_view key, const Json& found, wall::Date& into);
    void read(std::string_view key, const Json& found, units::Kilograms& into) {
        read(key, found, into.value);
    }
    void read(std::string_view key, const Json& found, units::LengthUnit& into);
    void read(std::string_view key, const Json& found, geometry::Polygon& into);
    template <class Kind>
    void read(std::string_view key, const Json& found, wall::Id<Kind>& into) {
        read(key, found, into.text);
    }
    template <class Enum>
    void read(std::string_view key, const Json& found, Enum& into) requires requires {
        wall::Names<Enum>::values;
    }
    {
        std::string text;
        read(key, found, text);
        if (const auto value = wall::with_name<Enum>(text))
            into = *value;
        else
            not_among(key, found,
                      {std::begin(wall::Names<Enum>::values), std::end(wall::Names<Enum>::values)});
    }
    template <class Enum>
    void read(std::string_view key, const Json& found, std::vector<Enum>& into) requires requires {
        wall::Names<Enum>::values;
    }
    {
        if (!expect(key, found, found.is_array(), kListWanted))
            return;
        for (const Json& name : found)
            read(key, name, into.emplace_back());
    }
    void not_among(std::string_view key, const Json& found,
                   const std::vector<std::string_view>& allowed);

    static constexpr const char* kListWanted = "must be a list in [ ]";

    const Json& value_;
    std::string path_;
    FirstProblem& problem_;
    std::set<std::string, std::less<>> read_keys_;
};

class ObjectWriter {
  public:
    template <class T>
    void must(std::string_view key, const T& value) {
        json_[std::string(key)] = to_json(key, value);
    }
    template <class T>
    void may(std::string_view key, const T& value) {
        if (says_something(value))
            must(key, value);
    }
    template <class T>
    void may(std::string_view key, const std::optional<T>& value) {
        if (value)
            must(key, *value);
    }
    template <class T>
    void usually(std::string_view key, const T& value, const std::type_identity_t<T>& usual) {
        if (to_json(key, value) != to_json(key, usual))
            must(key, value);
    }
    template <class Whole, class Part>
    void pair(std::string_view first_key, Part Whole::*first, std::string_view second_key,
              Part Whole::*second, const std::optional<Whole>& value) {
        if (!value)
            return;
        must(first_key, (*value).*first);
        must(second_key, (*value).*second);
    }
    void size(const geometry::Size& value);
    void rect(const geometry::Rect<geometry::Wall>& value);
    void point(const std::optional<geometry::Point<geometry::Wall>>& value);
    template <class T>
    void object(std::string_view key, const T& value) {
        Json inner = object_json(value);
        if (!inner.empty())
            json_[std::string(key)] = std::move(inner);
    }
    template <class T>
    void object(std::string_view key, const std::optional<T>& value) {
        if (value)
            json_[std::string(key)] = object_json(*value);
    }
    template <class T>
    void must_object(std::string_view key, const T& value) {
        object(key, value);
    }
    template <class T>
    void list(std::string_view key, const std::vector<T>& values) {
        if (values.empty())
            return;
        Json& list = json_[std::string(key)] = Json::array();
        for (const T& value : values)
            list.push_back(object_json(value));
    }
    /// To be called last: what this version does not understand follows what it does.
    void unknown(const wall::UnknownKeys& keys);

    [[nodiscard]] Json take() && { return std::move(json_); }

  private:
    template <class T>
    static Json object_json(const T& value) {
        ObjectWriter inner;
        fields(inner, value);
        return std::move(inner).take();
    }

    static bool says_something(const std::string& text) { return !text.empty(); }
    static bool says_something(bool flag) { return flag; }
    static bool says_something(int count) { return count != 0; }
    template <class T>
    static bool says_something(const std::vector<T>& values) {
        return !values.empty();
    }
    template <class T>
    static bool says_something(const T&) {
        return true;
    }

    static Json to_json(std::string_view key, double value);
    static Json to_json(std::string_view key, int value);
    static Json to_json(std::string_view key, bool value);
    static Json to_json(std::string_view key, const std::string& text);
    static Json to_json(std::string_view key, wall::Colour value);
    static Json to_json(std::string_view key, const wall::Date& value);
    static Json to_json(std::string_view key, units::Kilograms value) {
        return to_json(key, value.value);
    }
    static Json to_json(std::string_view key, units::LengthUnit value);
    static Json to_json(std::string_view key, const geometry::Polygon& value);
    template <class Kind>
    static Json to_json(std::string_view key, const wall::Id<Kind>& id) {
        return to_json(key, id.text);
    }
    template <class Enum>
    static Json to_json(std::string_view /*key*/, Enum value) requires requires {
        wall::Names<Enum>::values;
    }
    { return wall::name_of(value); }
    template <class Enum>
    static Json to_json(std::string_view key, const std::vector<Enum>& values) requires requires {
        wall::Names<Enum>::values;
    }
    {
        Json list = Json::array();
        for (const Enum value : values)
            list.push_back(to_json(key, value));
        return list;
    }

    Json json_ = Json::object();
};

}  // namespace wallwright::store
