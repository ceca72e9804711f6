#include "store/preferences.h"

#include "store/files.h"
#include "store/json_text.h"
#include "store/text_place.h"

#include <fmt/format.h>

#include <algorithm>
#include <system_error>

namespace wallwright::store {

namespace {

bool flag(const Json& json, const char* key) {
    const auto found = json.find(key);
    return found != json.end() && found->is_boolean() && found->get<bool>();
}

double text_scale(const Json& json) {
    const auto found = json.find("text_scale");
    return found != json.end() && found->is_number()
               ? std::clamp(found->get<double>(), Preferences::kLeastScale, Preferences::kMostScale)
               : Preferences{}.text_scale;
}

std::vector<std::filesystem::path> recent(const Json& json) {
    std::vector<std::filesystem::path> files;
    const auto found = json.find("recent");
    if (found == json.end() || !found->is_array())
        return files;
    for (const Json& file : *found)
        if (file.is_string() && files.size() < Preferences::kMostRecent)
            files.emplace_back(file.get<std::string>());
    return files;
}

}  // namespace

Preferences read_preferences(const std::filesystem::path& file) {
    const auto text = read_file(file);
    if (!text)
        return {};
    const auto json = parse_json(*text, file.string());
    if (!json || !json->is_object())
        return {};
    return {flag(*json, "dark"), text_scale(*json), recent(*json)};
}

Outcome write_preferences(const std::filesystem::path& file, const Preferences& preferences) {
    Json files = Json::array();
    for (const std::filesystem::path& one : preferences.recent)
        if (!first_bad_utf8(one.string()))  // JSON has no other letters.
            files.push_back(one.string());
    const Json json = {
        {"dark", preferences.dark}, {"text_scale", preferences.text_scale}, {"recent", files}};
    std::error_code ignored;  // write_file says what is wrong with the folder.
    std::filesystem::create_directories(file.parent_path(), ignored);
    return write_file(file, to_json_text(json));
}

void remember(Preferences& preferences, const std::filesystem::path& file) {
    std::erase(preferences.recent, file);
    preferences.recent.insert(preferences.recent.begin(), file);
    if (preferences.recent.size() > Preferences::kMostRecent)
        preferences.recent.resize(Preferences::kMostRecent);
}

}  // namespace wallwright::store
