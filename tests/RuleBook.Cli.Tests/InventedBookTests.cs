namespace RuleBook.Cli.Tests;

/// <summary>
/// What the command tells of a book that is small enough to be told by hand: an invented nation and a state of it, with one rule of each
/// kind. No figure is that of any law; the words of the vocabulary are those of this repository.
/// </summary>
public sealed class InventedBookTests : IDisposable
{
    private const string Coverage = """

        coverage:
          - { topic: ride-height, state: complete }
          - { topic: certification, state: none, lacks: All. }
          - { topic: mass-ratings, state: none, lacks: All. }
          - { topic: road-use, state: none, lacks: All. }
          - { topic: towing, state: none, lacks: All. }
          - { topic: tyres-and-wheels, state: none, lacks: All. }
        """;

    private static readonly (string File, string Text)[] Files =
    [
        (
            "xa/jurisdiction.yaml",
            """
            jurisdiction: xa
            name: The nation
            registers: no
            registers-note: Vehicles are registered in the north.
            ask: { authority: The nation's office }
            """ + Coverage
        ),
        (
            "xa/sources.yaml",
            """
            jurisdiction: xa
            sources:
              - { source: code, title: The code, publisher: The nation, read-as: primary, checked: 2026-11, recheck-after: 2027-11-25 }
              - { source: letter, title: A letter, publisher: A reader, read-as: secondary, clauses: none, checked: 2026-11,
                  recheck-after: 2027-11-25 }
            """
        ),
        (
            "xa/ride-height.yaml",
            """
            jurisdiction: xa
            topic: ride-height
            rules:
              - rule: raise
                title: Raising
                versions:
                  - from: 2012-01-01
                    sources: [ { cite: code, clause: "1", carries: [from, certificate] }, { cite: letter } ]
                    tiers:
                      - pathway: no-certificate
                        when: { four-wheel-drive: yes, gvm: { at-most: 3500 kg } }
                        within: { suspension-lift: 50 mm, body-lift: none, track-increase: not-established }
                      - pathway: certificate
                        within: { suspension-lift: { at-least: 10 mm, at-most: 75 mm } }
                        provided: [lane-change-test]
                    beyond: prohibited
              - rule: lower
                title: Lowering
                versions:
                  - from: unknown
                    in-force-by: 2019-05-06
                    until: 2020-02-01
                    sources: [ { cite: code, clause: "2" } ]
                    tiers: []
                    beyond: prohibited
              - rule: extend
                title: Longer shackles
                versions:
                  - from: unknown
                    in-force-by: 2019-05-06
                    sources: [ { cite: code, clause: "2" } ]
                    tiers: []
                    beyond: not-established
                  - proposed: yes
                    sources: [ { cite: code, clause: "9" } ]
                    tiers: [ { pathway: certificate, within: { suspension-lift: 60 mm } } ]
                    beyond: prohibited
            """
        ),
        (
            "xa-n/jurisdiction.yaml",
            """
            jurisdiction: xa-n
            name: The north
            within: xa
            registers: yes
            ask: { authority: The northern office, url: "https://north.example/" }
            """ + Coverage
        ),
        (
            "xa-n/sources.yaml",
            """
            jurisdiction: xa-n
            sources:
              - { source: act, title: The act, publisher: The north, read-as: primary, checked: 2026-11, recheck-after: 2027-11-25 }
            """
        ),
        (
            "xa-n/ride-height.yaml",
            """
            jurisdiction: xa-n
            topic: ride-height
            rules:
              - rule: raise
                title: Raising in the north
                versions:
                  - from: "[2015-01-01..2015-12-31]"
                    sources: [ { cite: act, clause: "3" } ]
                    not-regulated: Left to the drivers.
                  - from: 2016-03-01
                    warning-only: yes
                    sources: [ { cite: act, clause: "4" }, { cite: xa/code, clause: "1" } ]
                    adopts: { rule: xa/ride-height/raise, as-of: 2013-05-06 }
                    except: [ { tier: certificate, within: { suspension-lift: 65 mm } } ]
                  - announced: 2027-03-01
                    sources: [ { cite: act, clause: "5" } ]
                    tiers: [ { pathway: no-certificate, within: { suspension-lift: 30 mm } } ]
                    beyond: prohibited
              - rule: swap
                title: Swapping springs
                versions:
                  - from: unknown
                    in-force-by: 2014-02-03
                    sources: [ { cite: act, clause: "6" } ]
                    not-established: { ask: The northern office, open: The annex }
            """
        ),
    ];

    private readonly string folder = Copy();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_limits_of_a_nation_are_told_with_how_each_is_known() =>
        (await Of("limits", "xa", "--on", "2026-11-20")).ShouldBe(
            """
            The nation (xa): limits in force on 20 November 2026
            Vehicles are registered in the north.

            Raising
              xa/ride-height/raise
              * in force from 2012-01-01
                - allowed without a certificate, four-wheel drive yes and GVM at most 3500 kg:
                  - suspension lift at most 50 mm (second hand)
                  - body lift: no limit (second hand)
                  - increase in wheel track: not established (second hand)
                - allowed with a certificate:
                  - suspension lift from 10 mm up to 75 mm
                  - to show: lane-change test passed
                - beyond: not allowed (second hand)
                The code, 1 (The nation; the authority's own text; checked 2026-11)
                A letter (A reader; known at second hand; checked 2026-11)

            Lowering
              xa/ride-height/lower
              * in force, start not established
                ? not established; ask The nation's office

            Longer shackles
              xa/ride-height/extend
              * in force, start not established
                - in every case: not established
                The code, 2 (The nation; the authority's own text; checked 2026-11)

            Not legal advice
            The nation's office and the licensed certifier decide.

            """
        );

    [Fact]
    public async Task The_limits_of_a_state_are_told_with_what_it_adopts() =>
        (await Of("limits", "xa-n", "--on", "2026-11-20")).ShouldBe(
            """
            The north (xa-n): limits in force on 20 November 2026

            Raising in the north
              xa-n/ride-height/raise
              * in force from 2016-03-01, a breach brings a warning only
                adopts xa/ride-height/raise as on 6 May 2013
                - allowed without a certificate, four-wheel drive yes and GVM at most 3500 kg:
                  - suspension lift at most 50 mm (second hand)
                  - body lift: no limit (second hand)
                  - increase in wheel track: not established (second hand)
                - allowed with a certificate:
                  - suspension lift from 10 mm up to 65 mm
                  - to show: lane-change test passed
                - beyond: not allowed (second hand)
                The act, 4 (The north; the authority's own text; checked 2026-11)
                The code, 1 (The nation; the authority's own text; checked 2026-11)
                A letter (A reader; known at second hand; checked 2026-11)

            Swapping springs
              xa-n/ride-height/swap
              * in force, start not established
                ? not established; ask The northern office; open The annex
                The act, 6 (The north; the authority's own text; checked 2026-11)

            Not legal advice
            The northern office and the licensed certifier decide. https://north.example/

            """
        );

    [Fact]
    public async Task How_the_rules_of_a_topic_came_about_is_told_a_line_a_change() =>
        (await Of("timeline", "ride-height", "--on", "2026-11-20")).ShouldBe(
            """
            ride height: one line a change, oldest first
            2012-01-01     xa/ride-height/raise: no-certificate (four-wheel-drive yes) suspension-lift at most 50 mm; certificate suspension-lift at most 75 mm
            by 2014-02-03  xa-n/ride-height/swap: in force, what it says is not established
            [2015-01-01..2015-12-31]  xa-n/ride-height/raise: not regulated
            2016-03-01     xa-n/ride-height/raise: adopts xa/ride-height/raise as it stood on 6 May 2013, with 1 exception, a breach brings a warning only
            by 2019-05-06  xa/ride-height/extend: in every case not established
            by 2019-05-06  xa/ride-height/lower: in every case not allowed
            2020-02-01     xa/ride-height/lower: ended
            2027-03-01     xa-n/ride-height/raise: announced, decides nothing: no-certificate suspension-lift at most 30 mm
            no day         xa/ride-height/extend: proposed, decides nothing: certificate suspension-lift at most 60 mm

            Positions on xa/ride-height/raise as on 20 November 2026
              - xa-n: in force with exceptions since 2016-03-01

            """
        );

    [Fact]
    public async Task What_the_book_holds_is_a_line_a_place_and_a_line_a_topic()
    {
        (await Of("limits", "--coverage")).ShouldBe(
            """
            | jurisdiction | rules | authority's text | second hand | common practice | memory | no source | not established |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            | The nation (`xa`) | 3 | 1 | 2 | 0 | 0 | 0 | 1 |
            | The north (`xa-n`) | 2 | 1 | 0 | 0 | 0 | 0 | 1 |

            """
        );
        (await Of("limits", "xa-n", "--coverage")).ShouldBe(
            """
            | topic, coverage | rules | authority's text | second hand | common practice | memory | no source | not established |
            | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
            | certification, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | mass ratings, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | ride height, complete | 2 | 1 | 0 | 0 | 0 | 0 | 1 |
            | rules of use, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | towing, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |
            | tyres and wheels, none | 0 | 0 | 0 | 0 | 0 | 0 | 0 |

            """
        );
    }

    private async Task<string> Of(params string[] args)
    {
        var answer = await Invocation.Of([.. args, "--book", folder], width: 200);
        answer.Error.ShouldBeEmpty();
        return answer.Out;
    }

    private static string Copy()
    {
        var folder = Directory.CreateTempSubdirectory("rulebook-invented-").FullName;
        GitBook.CopyTo(Path.Combine(Invocation.Root, "schema", "vocabulary"), Path.Combine(folder, "schema", "vocabulary"));
        foreach (var (file, text) in Files)
        {
            var path = Path.Combine(folder, "jurisdictions", file);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text + "\n");
        }

        return folder;
    }
}
