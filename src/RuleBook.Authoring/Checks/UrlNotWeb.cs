using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An address that is no web address.</summary>
internal static class UrlNotWeb
{
    internal static readonly CheckInfo Info = new(
        "url-not-web",
        "an address does not begin with http or https",
        "It is shown as a link.",
        "give the document's address on the web, or leave it out"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Jurisdictions.SelectMany(place =>
                place.Sources.Select(source => (source.Url, source.Mark)).Append((place.Ask.Url, Mark: book.Value(place.Mark, "ask")))
            )
            .Where(address => address.Url is not null && !IsWeb(address.Url))
            .Select(address => Info.At(book.Value(address.Mark, "url"), $"'{address.Url}' is not an address on the web"));

    private static bool IsWeb(string url) =>
        Uri.TryCreate(url, UriKind.Absolute, out var uri)
        && (uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeHttps)
        && uri.Host.Length > 0;
}
