using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace StudioKit.Field.Log.Release;

/// <summary>Names for sensitive records that tell nothing, and that are the same at every export.</summary>
/// <remarks>
/// The log's own identifiers are UUIDs of version 7, which begin with the millisecond they were made at, and others may hold a place's name. A
/// neutral one is a UUID of version 8 (RFC 9562, section 5.8) made of a SHA-256 of the session's and the record's identifiers; their 74 random
/// bits each keep anybody from trying them all. A name that is neutral already stays, so that what was imported leaves under the same name.
/// </remarks>
internal static partial class NeutralName
{
    public static string Of(string id, string sessionId) => Neutral().IsMatch(id) ? id : Uuid(Hash("record", sessionId, id));

    public static string OfSession(string id) => Neutral().IsMatch(id) ? id : Uuid(Hash("session", id));

    public static string OfFile(FieldFrame frame, string sessionId)
    {
        var extension = Path.GetExtension(frame.FileName).ToLowerInvariant();
        return NeutralFile().IsMatch(frame.FileName)
            ? frame.FileName
            : $"picture-{Convert.ToHexStringLower(Hash("picture", sessionId, frame.Id)[..8])}{(Extension().IsMatch(extension) ? extension : "")}";
    }

    private static byte[] Hash(params ReadOnlySpan<string> parts) => SHA256.HashData(Encoding.UTF8.GetBytes("studiokit\n" + string.Join('\n', parts)));

    private static string Uuid(byte[] hash)
    {
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return "urn:uuid:" + new Guid(hash.AsSpan(0, 16), bigEndian: true);
    }

    [GeneratedRegex("^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", RegexOptions.None, 1000)]
    private static partial Regex Neutral();

    [GeneratedRegex(@"^picture-[0-9a-f]{16}(\.(jpe?g|png|tiff?))?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NeutralFile();

    [GeneratedRegex(@"^\.(jpe?g|png|tiff?)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Extension();
}
