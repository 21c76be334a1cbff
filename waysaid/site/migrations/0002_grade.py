from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('waysaid_site', '0001_first'),
    ]

    operations = [
        migrations.AddField(
            model_name='schoolclass',
            name='grade',
            field=models.PositiveSmallIntegerField(blank=True, null=True),
        ),
    ]
