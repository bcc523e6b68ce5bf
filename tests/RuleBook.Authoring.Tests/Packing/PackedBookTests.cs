using System.Formats.Cbor;
using System.Security.Cryptography;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Packing;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Packing;

/// <summary>A book as one file (derived from its documentation; the encoding is CBOR, RFC 8949).</summary>
public sealed class PackedBookTests
{
    private static readonly Lazy<PackedBook> Packed = new(() => PackedBook.Of(TestBook.Folder));

    [Fact]
    public void What_was_packed_reads_back_as_the_folder_was_with_every_place()
    {
        var folder = BookFolder.Load(TestBook.Folder);
        var read = PackedBook.Read(Packed.Value.ToBytes(), "book");

        read.Digest.ShouldBe(folder.Digest);
        read.Files.Select(file => Told(file.Root)).ShouldBe(BookNodes.Read(folder, []).Select(file => Told(file.Root)));
        read.Open().Jurisdictions.Length.ShouldBe(TestBook.Book.Jurisdictions.Length);
    }

    [Fact]
    public void The_same_book_is_packed_to_the_same_bytes() => PackedBook.Of(TestBook.Folder).ToBytes().ShouldBe(Packed.Value.ToBytes());

    [Theory]
    [InlineData(0)]
    [InlineData(1_000)]
    [InlineData(-1)]
    public void One_damaged_bit_anywhere_is_refused(int at)
    {
        var bytes = Packed.Value.ToBytes();
        bytes[at < 0 ? bytes.Length + at : at] ^= 1;

        Refused(bytes).Text.ShouldBe("it is damaged, or no packed book");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(31)]
    [InlineData(5_000)]
    public void A_file_that_is_cut_short_is_refused(int length) =>
        Refused(Packed.Value.ToBytes()[..length]).Text.ShouldBe("it is damaged, or no packed book");

    [Fact]
    public void A_newer_format_is_refused_by_its_name()
    {
        var cbor = new CborWriter();
        cbor.WriteStartArray(1);
        cbor.WriteTextString("rulebook-2");
        cbor.WriteEndArray();

        Refused(Sealed(cbor.Encode())).Text.ShouldBe("its format is 'rulebook-2'; this version reads 'rulebook-1'");
    }

    [Fact]
    public void A_well_sealed_file_that_nests_without_end_is_refused()
    {
        var cbor = new CborWriter();
        cbor.WriteStartArray(3);
        cbor.WriteTextString("rulebook-1");
        cbor.WriteTextString("sha256:0");
        cbor.WriteStartMap(1);
        cbor.WriteTextString("jurisdictions/xa/sources.yaml");
        for (var depth = 0; depth < 20_000; depth++)
        {
            cbor.WriteStartArray(3);
            cbor.WriteInt32(1);
            cbor.WriteInt32(1);
            cbor.WriteStartArray(1);
        }

        cbor.WriteStartArray(0);
        cbor.WriteEndArray();
        for (var depth = 0; depth < 20_000; depth++)
        {
            cbor.WriteEndArray();
            cbor.WriteEndArray();
        }

        cbor.WriteEndMap();
        cbor.WriteEndArray();
        Refused(Sealed(cbor.Encode())).Text.ShouldBe("it is no packed book");
    }

    private static byte[] Sealed(byte[] body) => [.. body, .. SHA256.HashData(body)];

    private static Problem Refused(byte[] bytes) =>
        Should.Throw<InputException>(() => PackedBook.Read(bytes, "book")).Problems.ShouldHaveSingleItem();

    private static string Told(Node node) =>
        node switch
        {
            Scalar scalar => $"{scalar.Mark}={scalar.Text}",
            Sequence list => $"{list.Mark}[{string.Join(',', list.Items.Select(item => Told(item)))}]",
            Mapping keys => $"{keys.Mark}{{{string.Join(',', keys.Entries.Select(entry => $"{Told(entry.Key)}:{Told(entry.Value)}"))}}}",
            _ => throw new ArgumentException("no such node", nameof(node)),
        };
}
