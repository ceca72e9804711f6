#include "store/json_text.h"

#include "store/text_place.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <set>
#include <vector>

namespace wallwright::store {

namespace {

/// Feeds the parser and tells how far it has read.
class WatchedChar {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    WatchedChar(const char* at, const char** reached) : at_(at), reached_(reached) {}
    reference operator*() const { return *at_; }
    WatchedChar& operator++() {
        *reached_ = ++at_;
        return *this;
    }
    bool operator==(const WatchedChar& other) const { return at_ == other.at_; }

  private:
    const char* at_;
    const char** reached_;
};

/// One pass over a text: the parser calls back for each key, the first complaint stays.
class Reading {
  public:
    Reading(std::string_view text, const std::string& name) : text_(text), name_(name) {}

    Result<Json> parse() {
        if (const auto bad = first_bad_utf8(text_))
            return fail(at(*bad, "this is not UTF-8 text", "save the file as UTF-8"));
        Json value = parse_whole();
        if (complaint_)
            return fail(*complaint_);
        return value;
    }

  private:
    Json parse_whole() {
        const WatchedChar first(text_.data(), &reached_);
        const WatchedChar last(text_.data() + text_.size(), &reached_);
        const auto watch = [this](int depth, Json::parse_event_t event, const Json& parsed) {
            notice(depth, event, parsed);
            return true;
        };
        try {
            return Json::parse(first, last, watch);
        } catch (const Json::parse_error& error) {
            complain(not_json(error.byte));
        } catch (const Json::exception&) {
            complain(at(read_so_far(), "this number is beyond all measure", "write a smaller one"));
        }
        return {};
    }

    void notice(int depth, Json::parse_event_t event, const Json& parsed) {
        using Event = Json::parse_event_t;
        if (complaint_)
            return;
        if (depth > kDeepestJson && (event == Event::object_start || event == Event::array_start))
            complain(at(read_so_far(),
                        fmt::format("brackets within brackets, more than {} deep", kDeepestJson),
                        "no project file needs that; go back to an earlier copy"));
        if (event == Event::object_start)
            keys_.emplace_back();
        else if (event == Event::object_end)
            keys_.pop_back();
        else if (event == Event::key && !keys_.back().insert(parsed.get<std::string>()).second)
            complain(at(read_so_far(),
                        fmt::format("{} stands twice in the same object", parsed.dump()),
                        "keep one of the two"));
    }

    [[nodiscard]] Problem not_json(std::size_t bytes_read) const {
        if (bytes_read > text_.size())
            return at(text_.size(), "the text ends before its JSON does",
                      "part of the file is missing; go back to an earlier copy");
        return at(bytes_read > 0 ? bytes_read - 1 : 0, "the text is not JSON from here on",
                  "mend this line or the end of the one before");
    }

    [[nodiscard]] Problem at(std::size_t offset, std::string what, std::string remedy) const {
        TextPlace place = place_in(text_, offset);
        return {fmt::format("{}:{}", name_, place.line), std::move(what), std::move(remedy),
                std::move(place.excerpt)};
    }

    [[nodiscard]] std::size_t read_so_far() const {
        const std::ptrdiff_t read = reached_ == nullptr ? 0 : reached_ - text_.data();
        return static_cast<std::size_t>(std::max<std::ptrdiff_t>(read - 1, 0));
    }

    void complain(Problem problem) {
        if (!complaint_)
            complaint_ = std::move(problem);
    }

    std::string_view text_;
    const std::string& name_;
    const char* reached_ = nullptr;
    std::vector<std::set<std::string>> keys_;  // of the objects that are open
    std::optional<Problem> complaint_;
};

bool is_plain(const Json& value) {
    return !value.is_structured() || value.empty();
}

std::string plain_text(const Json& value) {
    return value.dump(-1, ' ', false, Json::error_handler_t::replace);
}

void append(std::string& text, const Json& value, std::size_t indent);

/// "[0, 0]"; lists of such lists stay on one line too, since an outline reads best so.
bool fits_one_line(const Json& list) {
    return std::all_of(list.begin(), list.end(), [](const Json& item) {
        return is_plain(item) ||
               (item.is_array() && std::all_of(item.begin(), item.end(), is_plain));
    });
}

void append_on_one_line(std::string& text, const Json& list) {
    const char* between = "[";
    for (const Json& item : list) {
        text += between;
        if (is_plain(item))
            text += plain_text(item);
        else
            append_on_one_line(text, item);
        between = ", ";
    }
    text += "]";
}

template <class Items, class AppendItem>
void append_lines(std::string& text, const Items& items, std::size_t indent,
                  AppendItem append_item) {
    const char* between = "\n";
    for (auto item = items.begin(); item != items.end(); ++item) {
        text += between;
        text.append(indent + 2, ' ');
        append_item(item);
        between = ",\n";
    }
    text += "\n";
    text.append(indent, ' ');
}

void append(std::string& text, const Json& value, std::size_t indent) {
    if (is_plain(value)) {
        text += plain_text(value);
    } else if (value.is_object()) {
        text += "{";
        append_lines(text, value, indent, [&text, indent](auto item) {
            text += plain_text(item.key()) + ": ";
            append(text, item.value(), indent + 2);
        });
        text += "}";
    } else if (fits_one_line(value)) {
        append_on_one_line(text, value);
    } else {
        text += "[";
        append_lines(text, value, indent,
                     [&text, indent](auto item) { append(text, *item, indent + 2); });
        text += "]";
    }
}

}  // namespace

Result<Json> parse_json(std::string_view text, const std::string& name) {
    return Reading(without_byte_order_mark(text), name).parse();
}

std::string to_json_text(const Json& value) {
    std::string text;
    append(text, value, 0);
    return text + "\n";
}

}  // namespace wallwright::store
