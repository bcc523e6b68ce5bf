using RuleBook.Authoring.Inspecting;
using RuleBook.Tables;

namespace RuleBook.Benchmarks;

/// <summary>The book's own table of au-qld, with its rules of every topic of modification.</summary>
internal sealed class ByTable
{
    private readonly Input category;
    private readonly Input fourWheelDrive;
    private readonly Input gvm;
    private readonly Input suspensionLift;
    private readonly Input bodyLift;
    private readonly Input growth;
    private readonly Input reduction;
    private readonly Input width;
    private readonly Input track;
    private readonly Row row;

    public ByTable(string folder)
    {
        var book = BookReading.Open(folder);
        Table = TableBook.Of(book).Table("au-qld", new DateOnly(2026, 11, 27));
        (category, fourWheelDrive, gvm) = (Table.Input("category"), Table.Input("four-wheel-drive"), Table.Input("gvm"));
        (suspensionLift, bodyLift, track) = (Table.Input("suspension-lift"), Table.Input("body-lift"), Table.Input("track-increase"));
        (growth, reduction, width) = (
            Table.Input("tyre-diameter-growth"),
            Table.Input("tyre-diameter-reduction"),
            Table.Input("tyre-section-width-ratio")
        );
        row = Table.NewRow();
    }

    public DecisionTable Table { get; }

    public Outcome Judge(Job job)
    {
        Place(job, row);
        return Table.Judge(row);
    }

    public Row Placed(Job job)
    {
        var placed = Table.NewRow();
        Place(job, placed);
        return placed;
    }

    public void Place(Batch batch, Job[] jobs)
    {
        for (var at = 0; at < jobs.Length; at++)
        {
            Place(jobs[at], row);
            batch.Set(at, row);
        }
    }

    private void Place(Job job, Row into)
    {
        into.Clear();
        into.Set(category, job.Category);
        into.Set(fourWheelDrive, job.FourWheelDrive ? "yes" : "no");
        into.Set(gvm, job.Gvm);
        into.Set(suspensionLift, job.SuspensionLift);
        into.Set(bodyLift, job.BodyLift);
        into.Set(growth, job.TyreGrowth);
        into.Set(reduction, -job.TyreGrowth);
        into.Set(width, job.TyreWidth);
        into.Set(track, job.TrackIncrease);
    }
}
