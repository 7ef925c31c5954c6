using System.Text.Json.Serialization;

namespace StudioKit.Web.Storage;

/// <summary>How what is kept passes between the page and its scripts.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(KeptKit))]
[JsonSerializable(typeof(IReadOnlyList<KeptKitLine>))]
[JsonSerializable(typeof(StudioKit.Web.Editing.KitBeside))]
[JsonSerializable(typeof(StorageRoom))]
[JsonSerializable(typeof(IReadOnlyList<OpenedFile>))]
[JsonSerializable(typeof(IReadOnlyDictionary<string, string>))]
internal sealed partial class StorageJson : JsonSerializerContext;
