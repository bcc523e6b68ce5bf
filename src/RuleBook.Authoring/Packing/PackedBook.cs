using System.Collections.Immutable;
using System.Formats.Cbor;
using System.Security.Cryptography;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law.Reading;
using RuleBook.Text;

namespace RuleBook.Authoring.Packing;

/// <summary>
/// A book as one file: its digest and every file of <c>jurisdictions/</c>, <c>schema/vocabulary/</c> and <c>schema/reference/</c> as nodes
/// with their places, so that nothing has to be parsed before it answers. CBOR (RFC 8949), followed by the SHA-256 of what is before it.
/// </summary>
/// <param name="Digest">The digest of the folder that was packed (see <see cref="BookFolder"/>).</param>
/// <param name="Files">Its files.</param>
public sealed record PackedBook(string Digest, ImmutableArray<BookFile> Files)
{
    /// <summary>The file name's usual ending.</summary>
    public const string Extension = ".rulebook";

    private const string Format = "rulebook-1";

    /// <summary>The book in a folder.</summary>
    /// <exception cref="InputException">It cannot be read or has errors; every problem is listed.</exception>
    public static PackedBook Of(string folder)
    {
        BookReading.Open(folder);
        var files = BookFolder.Load(folder);
        return new(files.Digest, [.. BookNodes.Read(files, [])]);
    }

    /// <summary>The bytes of the file; the same for the same book.</summary>
    public byte[] ToBytes()
    {
        var cbor = new CborWriter();
        cbor.WriteStartArray(3);
        cbor.WriteTextString(Format);
        cbor.WriteTextString(Digest);
        cbor.WriteStartMap(Files.Length);
        foreach (var file in Files)
        {
            cbor.WriteTextString(file.Path);
            NodeCbor.Write(cbor, file.Root);
        }

        cbor.WriteEndMap();
        cbor.WriteEndArray();
        var body = cbor.Encode();
        return [.. body, .. SHA256.HashData(body)];
    }

    /// <summary>Reads a packed book.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="name">Name under which problems are reported.</param>
    /// <exception cref="InputException">It is damaged, no packed book, or of a newer format.</exception>
    public static PackedBook Read(ReadOnlyMemory<byte> bytes, string name)
    {
        var body = bytes[..Math.Max(0, bytes.Length - SHA256.HashSizeInBytes)];
        if (!SHA256.HashData(body.Span).AsSpan().SequenceEqual(bytes.Span[body.Length..]))
            throw Refused(name, "it is damaged, or no packed book", "pack the book again: rulebook pack FILE");
        try
        {
            var cbor = new CborReader(body);
            cbor.ReadStartArray();
            if (cbor.ReadTextString() is var format && format != Format)
                throw Refused(
                    name,
                    $"its format is '{format}'; this version reads '{Format}'",
                    "use the version of the command that packed it, or a newer one"
                );
            var digest = cbor.ReadTextString();
            var files = ImmutableArray.CreateBuilder<BookFile>(cbor.ReadStartMap() ?? 0);
            while (cbor.PeekState() != CborReaderState.EndMap)
            {
                var path = cbor.ReadTextString();
                files.Add(new(path, NodeCbor.Read(cbor, path)));
            }

            return new(digest, files.DrainToImmutable());
        }
        catch (Exception error) when (error is CborContentException or InvalidOperationException or OverflowException)
        {
            throw Refused(name, "it is no packed book", "pack the book again: rulebook pack FILE");
        }
    }

    /// <summary>The book, ready to answer; one with errors is refused as its folder would be.</summary>
    /// <exception cref="InputException">It has errors, or a version that this one does not understand packed it.</exception>
    public Law.Book Open() => BookReading.OpenEarlier(Files, Digest);

    /// <summary>The book that was packed, and thus inspected, when the command was built.</summary>
    /// <inheritdoc cref="Open()"/>
    public Law.Book OpenOwn()
    {
        var problems = new List<Problem>();
        var book = BookReader.Read(Files, Digest, problems);
        return problems.Exists(problem => problem.Severity == Severity.Error) ? throw new InputException([.. problems]) : book;
    }

    private static InputException Refused(string name, string text, string tip) =>
        new(Problem.Error("not-a-packed-book", new Mark(name, 1, 1), text, tip));
}
