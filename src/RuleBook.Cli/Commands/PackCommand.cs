using System.CommandLine;
using RuleBook.Authoring.Files;
using RuleBook.Authoring.Packing;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook pack FILE</c>: the book as one file, which <c>--book FILE</c> takes.</summary>
internal static class PackCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var file = new Argument<string>("FILE") { Description = $"The file to write, such as 2026-11{PackedBook.Extension}" };
        var book = Choices.Book();
        var command = new Command("pack", "The book as one file; --book takes it in place of a folder") { file, book };
        command.SetAction(parsed =>
        {
            var target = Paths.Given("FILE", parsed.GetValue(file))!;
            var packed = PackedBook.Of(Inputs.BookFolder(parsed.GetValue(book), surroundings));
            var bytes = packed.ToBytes();
            if (!PackedBook.Read(bytes, target).ToBytes().AsSpan().SequenceEqual(bytes))
                throw new InputException(
                    Problem.Error("not-a-packed-book", new Mark(target, 1, 1), "what was packed does not read back as it was", "")
                );
            WholeFile.Write(target, bytes, surroundings.Stop);
            surroundings.Out.WriteLine($"{Visible.Of(target)}: {packed.Files.Length} files, {packed.Digest}");
            return ExitCode.Permitted;
        });
        return command;
    }
}
