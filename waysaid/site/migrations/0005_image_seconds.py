from django.db import migrations, models


class Migration(migrations.Migration):

    dependencies = [
        ('waysaid_site', '0004_rest'),
    ]

    operations = [
        migrations.AddField(
            model_name='schoolclass',
            name='image_seconds',
            field=models.PositiveSmallIntegerField(default=3),
        ),
    ]
