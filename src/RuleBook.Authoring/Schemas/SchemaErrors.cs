using Newtonsoft.Json.Linq;
using NJsonSchema;
using NJsonSchema.Validation;

namespace RuleBook.Authoring.Schemas;

/// <summary>The validator nests what is wrong inside items, types and alternatives; this takes it out again.</summary>
internal static class SchemaErrors
{
    internal static IEnumerable<ValidationError> Flat(IEnumerable<ValidationError> errors) => errors.SelectMany(Flat);

    private static IEnumerable<ValidationError> Flat(ValidationError error) =>
        error switch
        {
            ChildSchemaValidationError { Kind: ValidationErrorKind.NotAnyOf or ValidationErrorKind.NotOneOf } choice => Nearest(choice),
            ChildSchemaValidationError child => Flat(child.Errors.Values.SelectMany(errors => errors)),
            MultiTypeValidationError types => Flat(OfOwnType(types)),
            _ => [error],
        };

    /// <summary>Of the alternatives, the one that comes nearest to what is written.</summary>
    private static ValidationError[] Nearest(ChildSchemaValidationError choice)
    {
        var branches = choice.Errors.Values.Select(errors => Flat(errors).ToArray()).Where(errors => errors.Length > 0).ToArray();
        return branches.Length == 0 ? [choice] : branches.MinBy(errors => (errors.Any(IsType) ? 1000 : 0) + errors.Length)!;
    }

    private static IEnumerable<ValidationError> OfOwnType(MultiTypeValidationError error)
    {
        var own = error.Token switch
        {
            JObject => JsonObjectType.Object,
            JArray => JsonObjectType.Array,
            _ => JsonObjectType.String,
        };
        var errors = error.Errors.GetValueOrDefault(own) ?? [];
        return errors.Count > 0
            ? errors
            : [new ValidationError(ValidationErrorKind.Unknown, error.Property, error.Path, error.Token, error.Schema)];
    }

    private static bool IsType(ValidationError error) =>
        error.Kind
            is ValidationErrorKind.StringExpected
                or ValidationErrorKind.ObjectExpected
                or ValidationErrorKind.ArrayExpected
                or ValidationErrorKind.NumberExpected;
}
