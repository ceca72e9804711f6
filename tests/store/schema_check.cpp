#include "schema_check.h"

#include "support/command.h"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <memory>

namespace wallwright::store {

using nlohmann::json;

const json& schema_text() {
    static const json kText =
        json::parse(test::read_whole(WW_SOURCE "/assets/schema/project.schema.json"));
    return kText;
}

namespace {

const valijson::Schema& schema() {
    static const auto kSchema = [] {
        auto schema = std::make_unique<valijson::Schema>();
        valijson::SchemaParser(valijson::SchemaParser::kDraft7)
            .populateSchema(valijson::adapters::NlohmannJsonAdapter(schema_text()), *schema);
        return schema;
    }();
    return *kSchema;
}

}  // namespace

std::string breach(const json& file) {
    valijson::ValidationResults results;
    valijson::Validator validator;
    if (validator.validate(schema(), valijson::adapters::NlohmannJsonAdapter(file), &results))
        return "";
    std::string text = "breach:";
    valijson::ValidationResults::Error error;
    while (results.popError(error))
        text +=
            "\n" + (error.context.empty() ? "" : error.context.back()) + " " + error.description;
    return text;
}

}  // namespace wallwright::store
