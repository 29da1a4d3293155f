using System.Text.Json.Serialization;
using Fretloom.Scores.Sound;

namespace Fretloom.Studio.Client.State;

/// <summary>Writes the figures of an instrument's sound for the browser.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(SoundFigures))]
internal sealed partial class SoundJson : JsonSerializerContext;
