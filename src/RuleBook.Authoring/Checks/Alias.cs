using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A name that something had before.</summary>
/// <param name="Kind">Within what it must be unique: <c>jurisdiction</c>, <c>rule au/ride-height</c>, ...</param>
/// <param name="Name">The old name.</param>
/// <param name="Owner">The name now.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Alias(string Kind, string Name, string Owner, Mark Mark)
{
    /// <summary>Every alias of the book.</summary>
    internal static IEnumerable<Alias> All(Inspected book) =>
        [
            .. Of(book, book.Book.Jurisdictions, _ => "jurisdiction", place => place.Id, place => place.Aliases, place => place.Mark),
            .. Of(
                book,
                book.Rules,
                rule => $"rule of {rule.Jurisdiction}/{rule.Topic}",
                rule => rule.Name,
                rule => rule.Aliases,
                rule => rule.Mark
            ),
            .. Of(
                book,
                book.Book.Jurisdictions.SelectMany(place => place.Sources),
                source => $"source of {source.Jurisdiction}",
                source => source.Id,
                source => source.Aliases,
                source => source.Mark
            ),
            .. book.Book.Jurisdictions.SelectMany(place =>
                Of(
                    book,
                    place.Schemes,
                    _ => $"scheme of {place.Id}",
                    scheme => scheme.Name,
                    scheme => scheme.Aliases,
                    scheme => scheme.Mark
                )
            ),
        ];

    /// <summary>The names in use, as <c>kind name</c>.</summary>
    internal static HashSet<string> Live(Inspected book) =>
        new(
            book.Book.Jurisdictions.Select(place => $"jurisdiction {place.Id}")
                .Concat(book.Rules.Select(rule => $"rule of {rule.Jurisdiction}/{rule.Topic} {rule.Name}"))
                .Concat(
                    book.Book.Jurisdictions.SelectMany(place => place.Sources)
                        .Select(source => $"source of {source.Jurisdiction} {source.Id}")
                )
                .Concat(book.Book.Jurisdictions.SelectMany(place => place.Schemes.Select(scheme => $"scheme of {place.Id} {scheme.Name}"))),
            StringComparer.Ordinal
        );

    private static IEnumerable<Alias> Of<T>(
        Inspected book,
        IEnumerable<T> owners,
        Func<T, string> kind,
        Func<T, string> name,
        Func<T, IEnumerable<string>> aliases,
        Func<T, Mark> mark
    ) =>
        owners.SelectMany(owner =>
            aliases(owner).Select(alias => new Alias(kind(owner), alias, name(owner), book.Word(mark(owner), "aliases", alias)))
        );
}
