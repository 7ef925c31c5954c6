using System.Text.Json.Serialization;

namespace StudioKit.Web.Drawing;

/// <summary>What drawings tell their scripts; generated, as trimmed code has no reflection to lean on.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(IReadOnlyList<MarkAxis>))]
internal sealed partial class DrawingJson : JsonSerializerContext;
