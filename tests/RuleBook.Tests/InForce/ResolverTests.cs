using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Made;

namespace RuleBook.Tests.InForce;

/// <summary>
/// Which version is in force, and adoption followed to its end. Derived, on a nation <c>xa</c> and states of a scenario of our own.
/// </summary>
public sealed class ResolverTests
{
    private static readonly Content Hundred = new Stated([Tier(Pathway.Certificate, AtMost(Lift, 100))], Pathway.Prohibited);

    private static readonly Rule National = Rule("xa", From("2012-01-01", FiftyThenSeventyFive), From("2020-07-01", Hundred));

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2020-06-30", "2012-01-01", "2020-07-01")]
    [InlineData("2020-07-01", "2020-07-01", null)]
    public void A_version_is_in_force_until_the_next_one_starts(string day, string from, string? until)
    {
        var version = Resolve(National, day).ShouldHaveSingleItem();
        version.From.ShouldBe(Date(from));
        version.Until.ShouldBe(until is null ? null : Date(until));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_stated_end_counts_before_the_start_of_the_next()
    {
        var rule = Rule("xa", From("2012-01-01", Hundred) with { Until = Date("2015-01-01") }, From("2016-01-01", FiftyThenSeventyFive));
        Resolve(rule, "2014-12-31").ShouldHaveSingleItem().Until.ShouldBe(Date("2015-01-01"));
        var gap = Resolve(rule, "2015-06-01").ShouldHaveSingleItem();
        gap.From.ShouldBeNull();
        gap.Until.ShouldBe(Date("2016-01-01"));
        gap.Content.ShouldBe(new NotEstablished("Authority of xa", null, null));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Before_the_first_version_nothing_is_recorded_and_the_authority_is_who_to_ask()
    {
        var before = Resolve(National, "2011-12-31").ShouldHaveSingleItem();
        before.Content.ShouldBe(new NotEstablished("Authority of xa", null, null));
        before.Until.ShouldBe(Date("2012-01-01"));
        before.Sources.ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_announced_or_proposed_never_decides()
    {
        var rule = Rule(
            "xa",
            From("2012-01-01", FiftyThenSeventyFive),
            From(null, Hundred) with
            {
                Announced = Date("2020-07-01"),
            },
            From(null, Hundred) with
            {
                Proposed = true,
            }
        );
        Resolve(rule, "2026-11-25").ShouldHaveSingleItem().Content.ShouldBe(FiftyThenSeventyFive);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(null, "2019-01-01", false)]
    [InlineData(null, "2021-01-01", true)] // as amended: the national rule of the day
    [InlineData("2019-01-01", "2021-01-01", false)] // as it stood on the day named
    public void An_adoption_takes_the_rule_as_amended_or_as_it_stood(string? asOf, string day, bool hundred)
    {
        var version = Resolve(State(Adopting("xa/ride-height/raise", asOf is null ? null : Day(asOf))), day).ShouldHaveSingleItem();
        version.Content.ShouldBe(hundred ? Hundred : FiftyThenSeventyFive);
        version
            .Adopted.Select(step => (step.Rule, step.AsOf, step.Moving))
            .ShouldBe([("xa/ride-height/raise", Day(asOf ?? day), asOf is null)]);
        version.From.ShouldBe(Date("2013-01-01"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_exception_replaces_the_limit_of_its_measure_on_its_tier_and_leaves_the_rest()
    {
        var adopted = Tiers(Adopting("xa/ride-height/raise", Day("2019-01-01"), Departing("Certificate", AtMost(Lift, 60))));
        adopted.Select(tier => tier.Limits.ShouldHaveSingleItem()).ShouldBe([AtMost(Lift, 50), AtMost(Lift, 60)]);

        adopted = Tiers(Adopting("xa/ride-height/raise", Day("2019-01-01"), Departing("Certificate", AtMost("body-lift", 0))));
        adopted[1].Limits.ShouldBe([AtMost(Lift, 75), AtMost("body-lift", 0)]);
        adopted[0].Limits.ShouldBe([AtMost(Lift, 50)]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_exception_replaces_only_the_end_of_a_range_that_it_names()
    {
        var (low, high) = (new Bound(-50, true), new Bound(50, false));
        var national = Rule("xa", From("2012-01-01", new Stated([Tier(Pathway.Certificate, Range(low, high))], Pathway.Prohibited)));
        Limits(AtMost(Lift, 40)).ShouldBe(Range(low, new Bound(40, true)));
        Limits(Range(new Bound(-30, true), null)).ShouldBe(Range(new Bound(-30, true), high));
        Limits(Range(new Bound(-30, true), new Bound(40, true))).ShouldBe(Range(new Bound(-30, true), new Bound(40, true)));
        Limits(Of(Lift, LimitKind.NotEstablished)).ShouldBe(Of(Lift, LimitKind.NotEstablished));

        Limit Limits(Limit own)
        {
            var state = State(Adopting("xa/ride-height/raise", null, Departing("Certificate", own)));
            var resolved = Resolver
                .Resolve(Book(Place("xa", national), Place("xa-b", state)), state, Day("2021-01-01"))
                .ShouldHaveSingleItem();
            return ((Stated)resolved.Content).Tiers.ShouldHaveSingleItem().Limits.ShouldHaveSingleItem();
        }

        static Limit Range(Bound? low, Bound? high) => new(Lift, LimitKind.Bounded, new Bounds(low, high), Mark);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_exception_drops_a_tier_or_adds_one_after_those_of_its_pathway_or_changes_what_is_to_be_shown()
    {
        var dropped = Departing("Certificate") with { Dropped = true };
        Tiers(Adopting("xa/ride-height/raise", Day("2019-01-01"), dropped)).ShouldHaveSingleItem().Pathway.ShouldBe(Pathway.NoCertificate);

        var added = new Departure(null, [], null, false, Tier(Pathway.Certificate, AtMost(Lift, 55)) with { Name = "own" }, [], Mark);
        Tiers(Adopting("xa/ride-height/raise", Day("2019-01-01"), added))
            .Select(tier => tier.Name)
            .ShouldBe(["NoCertificate", "Certificate", "own"]);

        var shown = Departing("Certificate") with { Provided = ["lane-change-test"] };
        var tiers = Tiers(Adopting("xa/ride-height/raise", Day("2019-01-01"), shown));
        tiers[1].Provided.ShouldBe(["lane-change-test"]);
        tiers[1].Limits.ShouldBe([AtMost(Lift, 75)]);
        tiers[0].Provided.ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_verdict_by_adoption_leans_on_the_adopting_law_the_exception_and_the_adopted_rule()
    {
        var national = National with
        {
            Versions = [.. National.Versions.Select(version => version with { Sources = [Cite("law")], Note = "theirs" })],
        };
        var exception = Departing("Certificate", AtMost(Lift, 90)) with { Sources = [Cite("note"), Cite("no-such-source")] };
        var own = From("2013-01-01", Adopting("xa/ride-height/raise", null, exception)) with { Sources = [Cite("law")], Note = "own" };
        var version = Resolver
            .Resolve(Book(Place("xa", national), Place("xa-b", Rule("xa-b", own))), Rule("xa-b", own), Day("2021-01-01"))
            .ShouldHaveSingleItem();
        version.Sources.Select(cited => $"{cited.Source.Jurisdiction} {cited.Source.Id}").ShouldBe(["xa-b law", "xa-b note", "xa law"]);
        version.Notes.ShouldBe(["own", "theirs"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_a_tier_cites_stays_a_source_of_the_jurisdiction_that_wrote_it()
    {
        var national = Rule(
            "xa",
            From(
                "2012-01-01",
                new Stated(
                    [Tier(Pathway.Certificate, AtMost(Lift, 75)) with { Sources = [Cite("law"), Cite("xz/act")] }],
                    Pathway.Prohibited
                )
            )
        );
        var exception = Departing("Certificate", AtMost(Lift, 60)) with { Sources = [Cite("note")] };
        var state = State(Adopting("xa/ride-height/raise", null, exception));
        var second = Rule("xa-c", From("2014-01-01", Adopting("xa-b/ride-height/raise", null)));
        var book = Book(Place("xa", national), Place("xa-b", state), Place("xa-c", second));
        Cites(state).ShouldBe(["xa/law", "xz/act", "note"]);
        Cites(second).ShouldBe(["xa/law", "xz/act", "xa-b/note"]);

        IEnumerable<string> Cites(Rule rule) =>
            ((Stated)Resolver.Resolve(book, rule, Day("2021-01-01")).ShouldHaveSingleItem().Content)
                .Tiers[0]
                .Sources.Select(each => each.Cite);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void How_it_is_measured_is_the_adopting_states_own_word_or_else_that_of_the_adopted_rule()
    {
        var (theirs, own) = (new Measured(["guard-edge"], "unladen", [Lift], null), new Measured(["sill"], "tare", ["body-lift"], null));
        var national = National with { Versions = [.. National.Versions.Select(version => version with { Measured = theirs })] };
        Follow(null).Measured.ShouldBe(theirs);
        Follow(null).Parts.ShouldBe([Lift]);
        Follow(own).Measured.ShouldBe(own);
        Follow(own).Parts.ShouldBe(["body-lift"]);

        ResolvedVersion Follow(Measured? measured)
        {
            var rule = Rule("xa-b", From("2013-01-01", Adopting("xa/ride-height/raise", null)) with { Measured = measured });
            return Resolver.Resolve(Book(Place("xa", national)), rule, Day("2021-01-01")).ShouldHaveSingleItem();
        }
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_adoption_of_an_adoption_is_followed_to_its_end_and_each_step_is_shown()
    {
        var second = Rule("xa-c", From("2014-01-01", Adopting("xa-b/ride-height/raise", null)));
        var book = Book(Place("xa", National), Place("xa-b", State(Adopting("xa/ride-height/raise", null))), Place("xa-c", second));
        var version = Resolver.Resolve(book, second, Day("2021-01-01")).ShouldHaveSingleItem();
        version.Content.ShouldBe(Hundred);
        version.Adopted.Select(step => step.Rule).ShouldBe(["xa-b/ride-height/raise", "xa/ride-height/raise"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_adoption_of_what_is_not_in_the_book_or_in_a_circle_is_not_established()
    {
        Resolve(State(Adopting("xa/ride-height/nothing", null)), "2021-01-01")
            .ShouldHaveSingleItem()
            .Content.ShouldBeOfType<NotEstablished>();
        var circle = State(Adopting("xa-b/ride-height/raise", null));
        var version = Resolver.Resolve(Book(Place("xa-b", circle)), circle, Day("2021-01-01")).ShouldHaveSingleItem();
        version.Content.ShouldBeOfType<NotEstablished>();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_was_renamed_is_found_by_its_old_name_and_what_is_not_an_id_is_not_found()
    {
        var book = Book(Place("xa", National));
        book.Rule("xa/ride-height/lift").ShouldBe(National);
        book.Rule("former-xa/ride-height/raise").ShouldBe(National);
        book.Rule("xa/towing/raise").ShouldBeNull();
        book.Rule("xa/raise").ShouldBeNull();
        book.Rule("xb/ride-height/raise").ShouldBeNull();
        book.Jurisdiction("former-xa").ShouldBe(book.Jurisdictions[0]);
        book.Jurisdiction("xb").ShouldBeNull();
        book.Source("xa", "old-law")!.Id.ShouldBe("law");
        book.Source("xb", "xa/law")!.Id.ShouldBe("law");
        book.Source("xb", "law").ShouldBeNull();
        book.Source("xa", "nothing").ShouldBeNull();
    }

    private static Rule State(Content content) => Rule("xa-b", From("2013-01-01", content));

    private static ImmutableArray<Tier> Tiers(Adoption adoption) =>
        Resolve(State(adoption), "2021-01-01").ShouldHaveSingleItem().Content.ShouldBeOfType<Stated>().Tiers;

    private static ImmutableArray<ResolvedVersion> Resolve(Rule rule, string day) =>
        Resolver.Resolve(Book(Place("xa", National), Place("xa-b", rule)), rule, Day(day));
}
