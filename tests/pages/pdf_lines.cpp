#include "pages/pdf_lines.h"

#include "support/command.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <sstream>

namespace wallwright::test {

namespace {

using Spot = geometry::Point<geometry::Page>;

constexpr double kMm = 25.4 / 72;

std::string share(double part) {
    return std::to_string(part).substr(0, 4) + " ";
}

/// x' = a x + c y + e, y' = b x + d y + f
struct Matrix {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;

    [[nodiscard]] Spot operator()(double x, double y) const {
        return {a * x + c * y + e, b * x + d * y + f};
    }
    /// This after `first`.
    [[nodiscard]] Matrix after(const Matrix& first) const {
        return {a * first.a + c * first.b,     b * first.a + d * first.b,
                a * first.c + c * first.d,     b * first.c + d * first.d,
                a * first.e + c * first.f + e, b * first.e + d * first.f + f};
    }
};

struct State {
    Matrix to_page;
    double width = 1;
    std::string colour;
};

/// Runs the operators of one page.
class Reader {
  public:
    explicit Reader(double height) : height_(height) {}

    void run(const std::string& word) {
        char* end = nullptr;
        const double number = std::strtod(word.c_str(), &end);
        if (end != word.c_str() && *end == '\0') {
            numbers_.push_back(number);
            return;
        }
        obey(word);
        numbers_.clear();
    }
    [[nodiscard]] std::vector<PdfLine> take() { return std::move(lines_); }

  private:
    [[nodiscard]] double n(std::size_t index) const {
        return index < numbers_.size() ? numbers_[index] : 0;
    }

    void obey(const std::string& word) {
        if (word == "q")
            saved_.push_back(now_);
        else if (word == "Q" && !saved_.empty()) {
            now_ = saved_.back();
            saved_.pop_back();
        } else if (word == "cm")
            now_.to_page = now_.to_page.after({n(0), n(1), n(2), n(3), n(4), n(5)});
        else if (word == "w")
            now_.width = n(0);
        else if (word == "RG")
            now_.colour = colour(3);
        else if (word == "G")
            now_.colour = colour(1);
        else
            trace(word);
    }

    void trace(const std::string& word) {
        if (word == "m") {
            start_ = at_ = now_.to_page(n(0), n(1));
        } else if (word == "l") {
            add(now_.to_page(n(0), n(1)));
        } else if (word == "c") {
            at_ = now_.to_page(n(4), n(5));
        } else if (word == "h") {
            add(start_);
        } else if (word == "re") {
            start_ = at_ = now_.to_page(n(0), n(1));
            add(now_.to_page(n(0) + n(2), n(1)));
            add(now_.to_page(n(0) + n(2), n(1) + n(3)));
            add(now_.to_page(n(0), n(1) + n(3)));
            add(start_);
        } else if (word == "S" || word == "B" || word == "s") {
            if (word == "s")
                add(start_);
            lines_.insert(lines_.end(), path_.begin(), path_.end());
            path_.clear();
        } else if (word == "f" || word == "f*" || word == "n" || word == "B*") {
            path_.clear();
        }
    }

    void add(Spot to) {
        const Matrix& m = now_.to_page;
        const double scale = std::sqrt(std::abs(m.a * m.d - m.b * m.c));
        const auto mm = [this](Spot point) {
            return Spot{kMm * point.x, kMm * (height_ - point.y)};
        };
        if (distance(at_, to) > 0.01)
            path_.push_back({mm(at_), mm(to), kMm * scale * now_.width, now_.colour});
        at_ = to;
    }

    [[nodiscard]] std::string colour(std::size_t count) const {
        std::string words;
        for (std::size_t i = 0; i < count; ++i)
            words += share(n(i));
        return words;
    }

    double height_;
    State now_;
    std::vector<State> saved_;
    std::vector<double> numbers_;
    Spot start_;
    Spot at_;
    std::vector<PdfLine> path_;
    std::vector<PdfLine> lines_;
};

/// Heights of the pages in points.
std::vector<double> heights_in(const std::string& open) {
    std::vector<double> heights;
    const std::string key = "/MediaBox [";
    for (std::size_t at = open.find(key); at != std::string::npos; at = open.find(key, at + 1)) {
        std::istringstream box(open.substr(at + key.size(), 200));
        double left = 0, low = 0, right = 0, high = 0;
        box >> left >> low >> right >> high;
        heights.push_back(high);
    }
    return heights;
}

}  // namespace

std::string pdf_colour(wall::Colour colour) {
    return share(colour.red / 255.0) + share(colour.green / 255.0) + share(colour.blue / 255.0);
}

std::vector<std::vector<PdfLine>> lines_in_pdf(const std::string& bytes) {
    const ScratchFolder scratch;
    write_whole(scratch.file("in.pdf"), bytes);
    const std::string open =
        run("qpdf --qdf --object-streams=disable " + scratch.file("in.pdf") + " -").out;
    const std::vector<double> heights = heights_in(open);
    std::vector<std::vector<PdfLine>> pages;
    const std::string key = "%% Contents for page ";
    for (std::size_t at = open.find(key); at != std::string::npos; at = open.find(key, at + 1)) {
        const std::size_t from = open.find("stream", at);
        const std::size_t to = open.find("endstream", from);
        REQUIRE(pages.size() < heights.size());
        Reader reader(heights[pages.size()]);
        std::istringstream words(open.substr(from + 6, to - from - 6));
        for (std::string word; words >> word;)
            reader.run(word);
        pages.push_back(reader.take());
    }
    return pages;
}

}  // namespace wallwright::test
