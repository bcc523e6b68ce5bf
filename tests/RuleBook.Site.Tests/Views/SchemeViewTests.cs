using RuleBook.Site.Views;

namespace RuleBook.Site.Tests.Views;

/// <summary>A scheme of certification as its page has it: that of the invented book, and one that says nothing.</summary>
public sealed class SchemeViewTests
{
    [Fact]
    public void What_a_scheme_says_is_told_and_what_it_does_not_say_is_not_established()
    {
        Told(version => version)
            .ShouldBe("Wrights of the north: wright, The northern office, the certifier, The nation, A new plate is needed.");
        Told(version =>
                version with
                {
                    Certifier = null,
                    AppointedBy = null,
                    Decides = null,
                    AcceptsAppointedIn = null,
                    Reregistering = null,
                }
            )
            .ShouldBe("Wrights of the north: not established, not established, not established, not established, not established");
        Told(version => version with { Decides = "authority", AcceptsAppointedIn = [] })
            .ShouldBe("Wrights of the north: wright, The northern office, the authority, none, A new plate is needed.");
    }

    private static string Told(Func<Law.SchemeVersion, Law.SchemeVersion> changed)
    {
        var place = InventedBook.Site.Book.Jurisdiction("xa-n")!;
        var scheme = place.Schemes.Single();
        var one = place with { Schemes = [scheme with { Versions = [changed(scheme.Versions.Single())] }] };
        var view = SchemeView.Of(InventedBook.Site, one).Single();
        return $"{view.Title}: {view.Certifier}, {view.AppointedBy}, {view.Decides}, {view.Accepts}, {view.Reregistering}";
    }
}
