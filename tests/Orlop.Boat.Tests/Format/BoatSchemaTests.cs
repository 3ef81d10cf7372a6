using System.Text.Json;
using CsCheck;
using Json.Schema;
using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Xunit;

namespace Orlop.Boat.Tests.Format;

public sealed class BoatSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(BoatSchema.Write());

    [Fact]
    public void Write_PublishedFile_IsUpToDate()
    {
        string path = Path.Combine(Repository.Root, "docs", "boat.schema.json");
        if (Environment.GetEnvironmentVariable("ORLOP_WRITE_DOCS") == "1")
        {
            File.WriteAllText(path, BoatSchema.Write());
        }

        Assert.True(BoatSchema.Write() == File.ReadAllText(path), "docs/boat.schema.json is out of date; run this test with ORLOP_WRITE_DOCS=1 and commit the file.");
    }

    [Fact]
    public void Evaluate_SmallBoat_IsValid() => Assert.True(IsValid(SmallBoat.Text));

    [Fact]
    public void Evaluate_EveryExampleBoat_IsValidAndReads()
    {
        string[] files = Directory.GetFiles(Path.Combine(Repository.Root, "examples"), "*.json", SearchOption.AllDirectories);
        Assert.NotEmpty(files);
        Assert.All(files, file =>
        {
            Assert.Empty(BoatJson.Read(File.ReadAllText(file)).Problems);
            Assert.True(IsValid(File.ReadAllText(file)), file);
        });
    }

    [Fact]
    public void Evaluate_AnyBoat_IsValid() => Gen.Int.Sample(seed => Assert.True(IsValid(BoatJson.Write(RandomBoat.Of(seed)))), iter: 20);

    [Theory]
    [InlineData("\"lengthM\": 1.2", "\"lengthFt\": 4")]
    [InlineData("\"kind\": \"space\"", "\"kind\": \"spaces\"")]
    [InlineData("\"nominalV\": 12.8,", "")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": \"12.8\",")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": {\"value\":12800,\"unit\":\"mV\"},")]
    [InlineData("\"nominalV\": 12.8,", "\"nominalV\": {\"value\":0.5},")]
    [InlineData("\"massKg\": 31", "\"massKg\": -0.001")]
    [InlineData("\"plusMinus\":4", "\"plusMinus\":-4")]
    [InlineData("\"known\":\"measured\"", "\"known\":\"mesured\"")]
    [InlineData("\"builtYear\": 1978", "\"builtYear\": 1978.5")]
    [InlineData("\"builtYear\": 1978", "\"builtYear\": 1799")]
    [InlineData("\"id\": \"port-tray\"", "\"id\": \"Port tray\"")]
    [InlineData("\"to\":\"bank.-\"", "\"to\":\"bank\"")]
    [InlineData("\"on\":\"2026-03-01\"", "\"on\":\"1 March\"")]
    [InlineData("\"formatVersion\": 1", "\"formatVersion\": 2")]
    [InlineData("\"becomes\": {\n            \"kind\": \"stock\",", "\"becomes\": {\n            \"kind\": \"alteration\",")]
    public void Evaluate_WhatTheReaderRefusesByForm_IsRefusedToo(string piece, string by)
    {
        Assert.False(BoatJson.Read(SmallBoat.With(piece, by)).IsGood);
        Assert.False(IsValid(SmallBoat.With(piece, by)));
    }

    private static bool IsValid(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
