using System.Security.Cryptography;
using System.Text;

namespace StudioKit.Sheets.Pdf;

/// <summary>Replaces what PDFsharp draws at random in a file by a hash of all the rest, so that equal pages give equal bytes.</summary>
/// <remarks>
/// Random are the six-letter tags before the names of subset fonts, two UUIDs in the XMP packet and the two file
/// identifiers of the trailer. All have a fixed length, so nothing moves. Of the file, only the content of pages may be compressed yet.
/// </remarks>
internal static class StablePdf
{
    private const int TagLength = 6;
    private const int UuidLength = 36;
    private const int IdentifierLength = 32;

    private static readonly byte[][] TagKeys = ["/FontName/"u8.ToArray(), "/BaseFont/"u8.ToArray()];
    private static readonly byte[][] UuidKeys = ["ID>uuid:"u8.ToArray()];
    private static readonly byte[][] IdentifierKeys = ["<</ID[<"u8.ToArray(), "><"u8.ToArray()];

    public static void Stabilise(ArraySegment<byte> file)
    {
        var tags = TagPlaces(file);
        var uuids = Places(file, 0, UuidKeys);
        var identifiers = Places(file, file.AsSpan().LastIndexOf(IdentifierKeys[0]), IdentifierKeys);

        var names = tags.Select(place => Text(file, place, TagLength)).Distinct().ToList();
        var nameOf = tags.ToDictionary(place => place, place => names.IndexOf(Text(file, place, TagLength)));
        tags.ForEach(place => Put(file, place, Tag(nameOf[place], [])));
        uuids.ForEach(place => Put(file, place, new string('0', UuidLength)));
        identifiers.ForEach(place => Put(file, place, new string('0', IdentifierLength)));

        var hash = SHA256.HashData(file.AsSpan());
        tags.ForEach(place => Put(file, place, Tag(nameOf[place], hash)));
        uuids.ForEach(place => Put(file, place, new Guid(hash.AsSpan(0, 16)).ToString()));
        identifiers.ForEach(place => Put(file, place, Convert.ToHexString(hash.AsSpan(0, IdentifierLength / 2))));
    }

    // Only a name followed by a plus sign is a tag: Helvetica and its like have none.
    private static List<int> TagPlaces(ArraySegment<byte> file) =>
        [.. Places(file, 0, TagKeys).Where(place => file[place + TagLength] == '+')];

    private static List<int> Places(ArraySegment<byte> file, int from, byte[][] keys)
    {
        var places = new List<int>();
        foreach (var key in keys)
        {
            for (var at = Find(file, from, key); at >= 0; at = Find(file, at, key))
            {
                places.Add(at);
            }
        }

        return places;
    }

    /// <summary>Place just behind the next occurrence of the key.</summary>
    private static int Find(ArraySegment<byte> file, int from, byte[] key)
    {
        var found = file.AsSpan(from).IndexOf(key);
        return found < 0 ? -1 : from + found + key.Length;
    }

    private static string Text(ArraySegment<byte> file, int place, int length) => Encoding.ASCII.GetString(file.AsSpan(place, length));

    private static void Put(ArraySegment<byte> file, int place, string text) => Encoding.ASCII.GetBytes(text, file.AsSpan(place));

    private static string Tag(int index, ReadOnlySpan<byte> hash)
    {
        var letters = new char[TagLength];
        letters[0] = (char)('A' + (index % 26));
        for (var i = 1; i < TagLength; i++)
        {
            letters[i] = (char)('A' + (hash.IsEmpty ? 0 : hash[i] % 26));
        }

        return new string(letters);
    }
}
