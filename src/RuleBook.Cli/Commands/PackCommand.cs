using System.CommandLine;
using RuleBook.Authoring.Packing;
using RuleBook.Cli.Answers;
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
            var packed = PackedBook.Of(Inputs.BookFolder(parsed.GetValue(book), surroundings));
            var bytes = packed.ToBytes();
            if (!PackedBook.Read(bytes, parsed.GetValue(file)!).ToBytes().AsSpan().SequenceEqual(bytes))
                throw new InputException(Problem.Error("not-a-packed-book", new Mark(parsed.GetValue(file)!, 1, 1), "what was packed does not read back as it was", ""));
            WholeFile.Write(parsed.GetValue(file)!, bytes);
            surroundings.Out.WriteLine($"{parsed.GetValue(file)}: {packed.Files.Length} files, {packed.Digest}");
            return ExitCode.Permitted;
        });
        return command;
    }
}
