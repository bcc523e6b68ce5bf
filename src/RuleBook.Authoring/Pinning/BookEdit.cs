using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>A book changed in one place by the smallest step that matters.</summary>
/// <param name="Book">The whole book with the change.</param>
/// <param name="Subject">Full id of the rule or scheme, or the jurisdiction.</param>
/// <param name="Mark">Where the thing changed is written.</param>
/// <param name="What">What is changed.</param>
/// <param name="Becomes">What it becomes.</param>
internal abstract record BookEdit(Book Book, string Subject, Mark Mark, string What, string Becomes)
{
    /// <summary>Ids of the jurisdictions whose cases may notice it, the likeliest first.</summary>
    public abstract IEnumerable<string> Places { get; }

    /// <summary>The topic on which it is likeliest noticed.</summary>
    public abstract string Topic { get; }

    /// <summary>Some cases, the likeliest to notice it first.</summary>
    public virtual IEnumerable<PreparedCase> Likeliest(IEnumerable<PreparedCase> cases) =>
        cases.OrderBy(one => one.Case.Topic == Topic ? 0 : 1);

    /// <summary>Whether one of some cases fails; they are asked in their order.</summary>
    public abstract bool NoticedByAny(IEnumerable<PreparedCase> cases);

    /// <summary>A point at which it shows, as told to a reader; null where it changes nothing.</summary>
    public abstract Unpinned? Effect(Book before);

    /// <summary>Every change of a book, in the jurisdictions and on the topics chosen; changes of one thing follow one another.</summary>
    public static IEnumerable<BookEdit> Of(Book book, Func<string, string, bool> chosen)
    {
        var adopters = new Adopters(book);
        return RuleChange
            .Of(book, rule => chosen(rule.Jurisdiction, rule.Topic), adopters)
            .Concat<BookEdit>(SchemeChange.Of(book, place => chosen(place.Id, SchemeChange.Certification)))
            .Concat(DecidedByChange.Of(book, place => book.Vocabulary.Topics.Keys.Any(topic => chosen(place.Id, topic))));
    }
}
