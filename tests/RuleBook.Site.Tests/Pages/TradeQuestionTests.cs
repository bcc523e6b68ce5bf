using AngleSharp.Html.Dom;
using RuleBook.Site.Questions;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The figures of the questions of the trade, each worked here by hand; what the words stand on is named beside them.</summary>
public sealed class TradeQuestionTests
{
    /// <summary>Metric sizes by the standards' handbooks: rim code 17 is 432 mm; the section height is rounded to the millimetre.</summary>
    private const double Placard = 432 + (2 * 172);
    private const double Fitted = 432 + (2 * 186);

    /// <summary>Full tank less the 10 L in tare, diesel at 0.835 kg/L.</summary>
    private const double Fuel = (90 - 10) * 0.835;

    /// <summary>On the rear axle by moments about the front one: tare, 70 L of diesel, and a bull bar ahead of the front axle.</summary>
    private const double RearOfUte = 920 + (70 * 0.835 * 1900 / 3150) + (55 * -850.0 / 3150);

    private static readonly Lazy<IHtmlDocument> Page = new(() =>
        Parsed.Of(TheBook.Site.Where(file => file.Path == "questions.html")).Single().Document
    );

    private static readonly Dictionary<string, string> Expected = new()
    {
        ["registration total"] = Mm(45 + ((Fitted - Placard) / 2)),
        ["registration qld"] = "allowed without a certificate",
        // The minister's release of 20 September 2018: 75 mm as 50 mm of suspension and 25 mm of tyres.
        ["registration qld-limit"] = Mm(75),
        // Common practice, no source: 50 mm in total in South Australia; beyond it the department's approval (its fact sheet on ride
        // height).
        ["registration sa-limit"] = Mm(50),
        ["registration sa"] = "allowed with the authority's approval first",
        // Section 24 of the Road Vehicle Standards Act 2018: approval of a second stage before the vehicle is provided.
        ["first-registration new"] = "allowed with the authority's approval first",
        ["first-registration old"] = Kg(3500),
        ["first-registration asked"] = Kg(4000),
        // Trade press, March 2023: certified by an approved person under the mass codes.
        ["first-registration registered"] = "allowed with a certificate",
        ["what-counts suspension"] = Mm(45),
        ["what-counts growth"] = Mm(Fitted - Placard),
        ["what-counts tyre"] = Mm((Fitted - Placard) / 2),
        ["what-counts total"] = Mm(45 + ((Fitted - Placard) / 2)),
        ["unladen tare"] = Kg(2700),
        ["unladen fuel"] = Kg(Fuel),
        ["unladen unladen"] = Kg(2700 + Fuel),
        ["springs load"] = Kg(RearOfUte),
        // A wheel rate of 68 N/mm on each side, standard gravity 9.80665 m/s2.
        ["springs lift"] = Mm(50 + ((1290 - RearOfUte) * 9.80665 / (2 * 68))),
        ["springs needed"] = Kg(1290 - RearOfUte),
        ["springs limit"] = Mm(50),
        // Common practice, no source: 7.0 t less 4.0 t leaves 3.0 t.
        ["trailer gcm"] = Kg(7000),
        ["trailer vehicle"] = Kg(4000),
        ["trailer left"] = Kg(3000),
        ["ball alone"] = Kg(3500),
        ["ball ball"] = Kg(300),
        ["ball axles"] = Kg(3500 - 300),
        ["ball vehicle"] = Kg(2700 + Fuel + 700 + 300),
        ["ball all"] = Kg(2700 + Fuel + 700 + 3500),
        // Moments about the front axle: the ball stands 1250 mm behind the rear axle of a wheelbase of 2850 mm.
        ["ball rear"] = Kg(300 * (2850 + 1250) / 2850.0),
        // Common practice, no source: beyond 250 kg each further 50 kg takes 100 kg.
        ["down-rating less"] = Kg(100),
        ["down-rating ball"] = Kg(300),
        ["down-rating gvm"] = Kg(4000),
        ["down-rating advised"] = Kg(3900),
        ["certifier lift"] = Mm(70),
        ["certifier verdict"] = "allowed with a certificate",
        ["certifier who"] = "approved person",
        // What another state's certifier is worth in Queensland was looked for and not found.
        ["certifier may"] = "not established",
        ["moving nsw"] =
            "Inspection at an authorised station for unregistered vehicles and, if the vehicle is significantly modified, a VSCCS "
            + "compliance "
            + "certificate; a certificate or plate of another state is not listed as enough.",
    };

    [Fact]
    public void Every_figure_of_an_answer_is_what_a_hand_calculation_gives()
    {
        var shown = Page
            .Value.All("[data-figure]")
            .Select(figure => (Name: $"{figure.Closest("section")!.Id} {figure.GetAttribute("data-figure")}", figure.TextContent))
            .ToDictionary(figure => figure.Name, figure => figure.TextContent);

        shown.Keys.ShouldBe(Expected.Keys, ignoreOrder: true);
        foreach (var (name, value) in Expected)
            shown[name].ShouldBe(value, name);
    }

    [Fact]
    public void A_dozen_questions_are_answered_and_each_claim_names_a_source_of_the_book_with_how_it_was_read()
    {
        var questions = QuestionsPage.All(new SiteBook(TheBook.Input));

        questions.Length.ShouldBe(12);
        foreach (var claim in questions.SelectMany(question => question.Claims))
        {
            claim.Sources.ShouldNotBeEmpty(string.Concat(claim.Parts.Select(part => part.Text)));
            claim.Sources.ShouldAllBe(source => source.ReadAs.Length > 0 && source.Title.Contains('('));
        }
    }

    [Fact]
    public void No_figure_of_a_claim_is_typed_that_the_vehicle_of_the_answer_does_not_state()
    {
        var questions = QuestionsPage.All(new SiteBook(TheBook.Input));
        foreach (var question in questions)
        foreach (
            var word in question
                .Claims.SelectMany(claim => claim.Parts)
                .Where(part => part.Figure.Length == 0)
                .SelectMany(part => part.Text.Split(' '))
        )
            if (word.Any(char.IsAsciiDigit) && word is not "10")
                Uri.UnescapeDataString(question.Job)
                    .ShouldContain(new string([.. word.Where(char.IsAsciiDigit)]), customMessage: question.Id);
    }

    [Fact]
    public void A_book_without_the_source_of_a_claim_leaves_the_question_out()
    {
        var book = TheBook.Input.Book with { Jurisdictions = [.. TheBook.Input.Book.Jurisdictions.Where(place => place.Id != "au-sa")] };
        var left = QuestionsPage.All(new SiteBook(TheBook.Input with { Book = book })).Select(question => question.Id).ToArray();

        left.ShouldNotContain("registration");
        left.ShouldContain("trailer");
    }

    private static string Mm(double value) => $"{Math.Round(value, MidpointRounding.AwayFromZero)} mm";

    private static string Kg(double value) => $"{Math.Round(value, MidpointRounding.AwayFromZero)} kg";
}
