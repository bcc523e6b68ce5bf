using CsCheck;
using RuleBook.Law;
using RuleBook.Tables;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Tables;

/// <summary>
/// The interface for a caller with many jobs, as its documentation shows it. Derived, on limits of a scenario of our own.
/// </summary>
public sealed class BatchTests
{
    private const string ByStability = """
        "tiers": [ { "pathway": "no-certificate", "when": { "stability-control": "no" }, "within": { "suspension-lift": "50 mm" } },
                   { "name": "total", "pathway": "certificate", "within": { "suspension-lift": { "under": "75 mm" },
                   "total-lift": "100 mm" } },
                   { "pathway": "approval", "within": { "suspension-lift": "not-established", "body-lift": "10 mm" } } ],
                   "beyond": "not-established"
        """;

    private static readonly DateOnly Day = new(2026, 11, 25);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_caller_with_many_jobs_opens_a_book_takes_a_table_places_facts_and_judges()
    {
        var book = Stating(ByStability);
        var table = TableBook.Of(book).Table("au-a", Day);
        TableBook.Of(book).Table("au-a", Day).ShouldBeSameAs(table); // compiled once
        var (lift, control) = (table.Input("suspension-lift"), table.Input("stability-control"));
        var row = table.NewRow();
        row.Set(control, "no");
        row.Set(lift, 45); // mm
        table.Judge(row).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));

        row.Set(lift, 501, 10); // 50.1 mm
        table.Judge(row).ShouldBe(new Outcome(Pathway.Certificate, Pathway.Certificate));

        row.Clear();
        row.Set(lift, 45);
        table.Complete(row).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Certificate)); // it depends on the stability control
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_row_that_changes_nothing_touches_no_topic()
    {
        var table = TableBook.Of(Stating(ByStability)).Table("au-a", Day);
        table.Judge(table.NewRow()).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Judging_allocates_nothing()
    {
        var table = TableBook.Of(Stating(ByStability)).Table("au-a", Day);
        var (lift, control, row) = (table.Input("suspension-lift"), table.Input("stability-control"), table.NewRow());
        var sum = Run(100);
        var before = GC.GetAllocatedBytesForCurrentThread();
        sum += Run(10_000);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(1000, $"after {sum}");

        int Run(int rows)
        {
            var worst = 0;
            for (var i = 0; i < rows; i++)
            {
                row.Clear();
                row.Set(control, i % 2 == 0 ? "yes" : "no");
                row.Set(lift, i % 100, 1 + i % 3);
                worst += (int)table.Judge(row).Worst;
            }

            return worst;
        }
    }

    [Theory]
    [InlineData("", "suspension-lift")]
    [InlineData("", "track-increase")]
    [InlineData(""" "for": { "any-of": [ { "stability-control": "no" }, { "body-lift": { "over": "20 mm" } } ] }, """, null)]
    [Trait("Basis", "derived")]
    public void A_batch_gives_for_each_row_what_the_row_gives_alone(string vehicles, string? ofWheels) =>
        Gen.Select(Gen.Int[1, 150], Gen.Int[0, 1_000_000])
            .Sample(
                (rows, seed) =>
                {
                    var wheels = Rule(
                        "wheels",
                        Since("2012-01-01", $$""" "tiers": [ { "pathway": "certificate", "within": { "{{ofWheels}}": "20 mm" } } ] """)
                    );
                    var book = Book(
                        Rule("raise", Since("2012-01-01", ByStability), vehicles),
                        ofWheels is null ? [] : [("jurisdictions/au-a/wheels", Topic("wheels", wheels))]
                    );
                    var table = TableBook.Of(book).Table("au-a", Day);
                    var batch = new Batch(table, rows);
                    var random = new Random(seed);
                    var (alone, together) = (new byte[rows], new byte[rows]);
                    var row = table.NewRow();
                    for (var i = 0; i < rows; i++)
                    {
                        row.Clear();
                        if (random.Next(4) > 0)
                            row.Set(table.Input("stability-control"), random.Next(2) == 0 ? "yes" : "no");
                        foreach (var name in (string[])["suspension-lift", "body-lift", "tyre-diameter-growth", "track-increase"])
                            if (random.Next(3) > 0)
                                row.Set(table.Input(name), random.Next(-10, 110));
                            else if (random.Next(9) == 0)
                                row.Forget(table.Input(name));
                        if (random.Next(4) == 0)
                            row.Set(table.Input("frame-height"), 500);
                        alone[i] = table.Judge(row).Pack();
                        batch.Set(i, row);
                    }

                    table.Judge(batch, together);
                    together.Select(Outcome.Unpack).ShouldBe(alone.Select(Outcome.Unpack));
                },
                iter: 200
            );

    [Fact]
    [Trait("Basis", "derived")]
    public void A_table_refuses_rows_of_another_and_inputs_that_no_rule_reads()
    {
        var table = TableBook.Of(Stating(ByStability)).Table("au-a", Day);
        var other = TableBook.Of(Stating(Tiers)).Table("au-a", Day);
        Should.Throw<ArgumentException>(() => new Batch(table, 1).Set(0, other.NewRow()));
        Should.Throw<ArgumentException>(() => table.Judge(new Batch(other, 1), new byte[1]));
        Should.Throw<ArgumentException>(() => table.Judge(new Batch(table, 2), new byte[1]));
        Should.Throw<KeyNotFoundException>(() => table.Input("doors"));
        Should.Throw<ArgumentException>(() => table.NewRow().Set(table.Input("stability-control"), "perhaps"));
        Should.Throw<ArgumentException>(() => TableBook.Of(Stating(Tiers)).Table("xx", Day));
    }
}
