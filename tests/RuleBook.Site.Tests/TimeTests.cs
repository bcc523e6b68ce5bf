using System.Diagnostics;

namespace RuleBook.Site.Tests;

/// <summary>Runs by itself, and counts the processor's time, so that a busy machine does not decide.</summary>
[CollectionDefinition(nameof(TimeTests), DisableParallelization = true)]
[Collection(nameof(TimeTests))]
public sealed class TimeTests
{
    [Fact]
    public void The_whole_book_is_rendered_in_less_than_five_seconds()
    {
        _ = TheBook.Site;
        using var self = Process.GetCurrentProcess();
        var before = self.TotalProcessorTime;
        SiteBuild.Render(TheBook.Input);
        self.Refresh();
        (self.TotalProcessorTime - before).ShouldBeLessThan(TimeSpan.FromSeconds(5));
    }
}
