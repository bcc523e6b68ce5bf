using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using NJsonSchema;
using NJsonSchema.Validation;
using RuleBook.Text;

namespace RuleBook.Authoring.Schemas;

/// <summary>Checks the shape of a file against a JSON Schema of <c>schema/</c>, with the place of everything that is wrong.</summary>
/// <remarks>
/// The schemas are those that an editor uses. A semantic check or the binder says what a schema cannot. A program compiled to native code
/// keeps NJsonSchema, NJsonSchema.Annotations, Namotion.Reflection and Newtonsoft.Json whole (<c>TrimmerRootAssembly</c>).
/// </remarks>
public static class SchemaCheck
{
    private static readonly ConcurrentDictionary<string, JsonSchema> Loaded = new(StringComparer.Ordinal);

    /// <summary>
    /// The names that <see cref="Find"/> takes: <c>jurisdiction</c>, <c>sources</c>, <c>rules</c>, <c>certification</c>, ...
    /// </summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. typeof(SchemaCheck)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.EndsWith(Suffix, StringComparison.Ordinal))
            .Select(name => name[..^Suffix.Length])
            .Order(StringComparer.Ordinal),
    ];

    private const string Suffix = ".schema.json";

    /// <summary>The text of a schema, as an editor reads it.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="ArgumentException">There is no such schema.</exception>
    public static string Text(string name)
    {
        using var stream =
            typeof(SchemaCheck).Assembly.GetManifestResourceStream(name + Suffix)
            ?? throw new ArgumentException($"there is no schema '{name}'", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The schema that a file of a book has to meet, or null for a file that has none.</summary>
    /// <param name="path">Relative to the book's folder, with forward slashes.</param>
    public static string? NameFor(string path) =>
        path.Split('/') switch
        {
            ["jurisdictions", "editions.yaml"] => "editions",
            ["jurisdictions", _, "jurisdiction.yaml"] => "jurisdiction",
            ["jurisdictions", _, "sources.yaml"] => "sources",
            ["jurisdictions", _, "certification.yaml"] => "certification",
            ["jurisdictions", _, _] => "rules",
            ["schema", "vocabulary", _] => "vocabulary",
            ["schema", "reference", "sources.yaml"] => "sources",
            ["schema", "reference", _] => "reference",
            _ => null,
        };

    /// <summary>Everything in <paramref name="root"/> that the schema does not allow, in no particular order.</summary>
    /// <param name="schema">One of <see cref="Names"/>.</param>
    /// <param name="root">The input.</param>
    public static IEnumerable<Problem> Find(string schema, Node root)
    {
        var tokens = new Tokens();
        var errors = Load(schema)
            .Validate(tokens.Of(root), new JsonSchemaValidatorSettings { PropertyStringComparer = StringComparer.Ordinal });
        var problems = new SchemaProblems(tokens, root);
        return SchemaErrors.Flat(errors).Select(problems.Of).OfType<Problem>().Distinct();
    }

    // What these libraries find by reflection in the runtime itself, kept where a program is compiled to native code.
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(IDictionary<string, object>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Dictionary<string, object>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Dictionary<string, JsonSchema>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(Dictionary<string, JsonSchemaProperty>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(List<string>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(List<object>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, typeof(List<JsonSchema>))]
    [DynamicDependency(DynamicallyAccessedMemberTypes.All, "System.Runtime.CompilerServices.NullableAttribute", "System.Private.CoreLib")]
    [DynamicDependency(
        DynamicallyAccessedMemberTypes.All,
        "System.Runtime.CompilerServices.NullableContextAttribute",
        "System.Private.CoreLib"
    )]
    private static JsonSchema Load(string name) =>
        Loaded.GetOrAdd(name, static key => JsonSchema.FromJsonAsync(Text(key)).GetAwaiter().GetResult());
}
