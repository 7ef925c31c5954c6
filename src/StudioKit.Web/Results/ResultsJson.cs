using System.Text.Json.Serialization;

namespace StudioKit.Web.Results;

/// <summary>How everything that passes between page and worker is written; generated, as trimmed code has no reflection to lean on.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(PlanRequest))]
[JsonSerializable(typeof(PlanAnswer))]
[JsonSerializable(typeof(SheetsRequest))]
[JsonSerializable(typeof(SheetOffers))]
[JsonSerializable(typeof(MadeFiles))]
[JsonSerializable(typeof(SheetPages))]
[JsonSerializable(typeof(PreviewRequest))]
[JsonSerializable(typeof(PreviewAnswer))]
[JsonSerializable(typeof(EditRequest))]
[JsonSerializable(typeof(EditAnswer))]
[JsonSerializable(typeof(SceneLightRequest))]
[JsonSerializable(typeof(SceneLightAnswer))]
[JsonSerializable(typeof(SolidRequest))]
[JsonSerializable(typeof(SolidAnswer))]
[JsonSerializable(typeof(PointRequest))]
[JsonSerializable(typeof(PointAnswer))]
[JsonSerializable(typeof(IReadOnlyList<HandleMove>))]
[JsonSerializable(typeof(PictureRequest))]
[JsonSerializable(typeof(ReadPicture))]
[JsonSerializable(typeof(FrameRequest))]
[JsonSerializable(typeof(FrameAnswer))]
[JsonSerializable(typeof(LadderRequest))]
[JsonSerializable(typeof(LadderAnswer))]
[JsonSerializable(typeof(CorrectionTexts))]
[JsonSerializable(typeof(KeptCorrections))]
public sealed partial class ResultsJson : JsonSerializerContext;
